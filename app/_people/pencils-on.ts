import type { View } from "../../lib/geometry";
import type { PanelId } from "../../lib/sheet";
import type { Person } from "../_room";

/** Somebody's pencil on a paper. Units: panel units, y down. */
export interface Pencil {
  readonly client: number;
  readonly hue: number;
  readonly x: number;
  readonly y: number;
}

export const NO_PENCILS: readonly Pencil[] = [];

/**
 * The pencils that point at one paper. Where nothing differs from `before` it is `before` that
 * comes back, so whoever paints them can tell.
 */
export function pencilsOn(
  others: readonly Person[],
  paper: { readonly panel: PanelId; readonly view: View },
  before: readonly Pencil[] = NO_PENCILS,
): readonly Pencil[] {
  const now = others.flatMap(({ client, hue, panel, view, pointer }): Pencil[] => {
    if (pointer === null || panel !== paper.panel || view !== paper.view) return [];
    return [{ client, hue, x: pointer[0], y: pointer[1] }];
  });
  if (now.length === 0) return NO_PENCILS;
  return now.length === before.length && now.every((pencil, i) => same(pencil, before[i]))
    ? before
    : now;
}

function same(one: Pencil, other: Pencil | undefined): boolean {
  return (
    other !== undefined &&
    one.client === other.client &&
    one.hue === other.hue &&
    one.x === other.x &&
    one.y === other.y
  );
}
