/** The two documents of a sheet. What a role may write is open or shut a document at a time. */
export const DOCUMENTS = ["drawing", "critique"] as const;
export type DocumentName = (typeof DOCUMENTS)[number];

export function isDocumentName(value: unknown): value is DocumentName {
  return DOCUMENTS.some((name) => name === value);
}
