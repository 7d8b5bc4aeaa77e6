/** Twelve base64url characters: 72 random bits. An id opens nothing; that takes a link. */
export type SheetId = string & { readonly __sheetId: never };

const SHAPE = /^[A-Za-z0-9_-]{12}$/;

/** The id, if it has the shape of one. Whether such a sheet exists is another question. */
export function readSheetId(value: unknown): SheetId | null {
  return typeof value === "string" && SHAPE.test(value) ? (value as SheetId) : null;
}
