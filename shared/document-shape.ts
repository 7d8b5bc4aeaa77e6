import type { DocumentName } from "./document-name";

/**
 * The maps at the root of each document. A document consists of maps alone, at the root and inside
 * it; an update that brings anything else, or a root of another name, is refused by the hub.
 */
export const DOCUMENT_ROOTS: { readonly [Name in DocumentName]: readonly string[] } = {
  drawing: ["sheet", "panels", "strokes"],
  critique: ["sheet", "notes", "strokes", "on-purpose", "verdicts"],
};
