/**
 * `full`: no room on the disk. `busy`: another process holds the file. `damaged`: a document is not
 * whole. `broken`: anything else.
 */
export type StoreErrorCode = "full" | "busy" | "last-owner" | "damaged" | "broken";

/** The base of errors lives in `lib`, which the hub does not know; this one travels between threads. */
export class StoreError extends Error {
  override name = "StoreError";
  readonly code: StoreErrorCode;

  constructor(code: StoreErrorCode, message: string, options?: ErrorOptions) {
    super(message, options);
    this.code = code;
  }
}

/** Names the failure by what the driver says of it: SQLite's and PostgreSQL's codes. */
export function toStoreError(error: unknown): StoreError {
  if (error instanceof StoreError) return error;
  const code = error instanceof Error && "code" in error ? String(error.code) : "";
  const message = error instanceof Error ? error.message : String(error);
  if (code === "SQLITE_FULL" || code === "53100")
    return new StoreError("full", message, { cause: error });
  if (code.startsWith("SQLITE_BUSY")) return new StoreError("busy", message, { cause: error });
  return new StoreError("broken", message, { cause: error });
}
