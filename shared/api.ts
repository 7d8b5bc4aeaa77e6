import { z } from "zod";
import { EXAMPLES } from "./api-answers";
import { Brief } from "./brief";
import { expecting, oneOf, text } from "./expecting";
import { ROLES } from "./role";
import { readSheetId, type SheetId } from "./sheet-id";

export const ExampleRequest = z.strictObject({
  from: z.literal("example"),
  example: oneOf(EXAMPLES),
});

/** A sheet file, parsed or as its text. What is in it is judged by the reader of sheet files. */
export const FileRequest = z.strictObject({
  from: z.literal("file"),
  file: z.union(
    [z.string(), z.record(z.string(), z.unknown())],
    expecting("a sheet file, parsed or as text"),
  ),
});

export const BriefRequest = Brief.transform((brief) => ({ from: "brief" as const, brief }));

/** POST /api/sheets: an example, a sheet file, or a brief without any `from`. */
export type CreateSheetRequest =
  | z.infer<typeof ExampleRequest>
  | z.infer<typeof FileRequest>
  | z.infer<typeof BriefRequest>;

/** Errors: ZodError; `complaint` makes one line of it. */
export function readCreateSheet(body: unknown): CreateSheetRequest {
  const from = typeof body === "object" && body !== null && "from" in body ? body.from : undefined;
  if (from === "example") return ExampleRequest.parse(body);
  if (from === "file") return FileRequest.parse(body);
  return BriefRequest.parse(body);
}

/** POST /api/enter. */
export const EnterRequest = z.strictObject({
  sheet: z.custom<SheetId>((value) => readSheetId(value) !== null, expecting("a sheet's id")),
  secret: z.string(expecting("a link's secret")).max(200),
});

const label = text({ min: 0, max: 60 });
/** When a link ends, in ms since 1970; null for never. */
const expiresAt = z.union(
  [z.number().int().positive(), z.null()],
  expecting("a time in ms since 1970, or null"),
);

/** POST /api/sheets/:id/links. */
export const NewLinkRequest = z.strictObject({
  role: oneOf(ROLES),
  label: label.default(""),
  expiresAt: expiresAt.default(null),
});

/** PATCH /api/sheets/:id/links/:link. What is left out stays as it is. */
export const LinkChangeRequest = z.strictObject({
  role: oneOf(ROLES).optional(),
  label: label.optional(),
  expiresAt: expiresAt.optional(),
});
