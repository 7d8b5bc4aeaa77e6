import * as z from "zod/mini";

const number = z.number().check(z.gte(-1e6), z.lte(1e6));

/** What a page says of its person while they are here. Everyone on the sheet sees it; nobody stores it. */
export const Presence = z.object({
  name: z.string().check(z.trim(), z.minLength(1), z.maxLength(40)),
  /** Degrees on the colour wheel. */
  hue: z.int().check(z.gte(0), z.lte(359)),
  /** The panel under their hand. */
  panel: z.nullable(z.string().check(z.maxLength(40))),
  view: z.nullable(z.enum(["side", "front"])),
  /** Where their pencil points, panel units, y down. */
  pointer: z.nullable(z.tuple([number, number])),
});
export type Presence = z.infer<typeof Presence>;

/** A stranger's presence is hearsay: whatever does not parse is simply not shown. */
export function readPresence(state: unknown): Presence | null {
  return Presence.safeParse(state).data ?? null;
}
