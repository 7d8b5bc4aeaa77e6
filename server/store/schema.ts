import type { Generated } from "kysely";

/** The tables, alike in SQLite and PostgreSQL. Times are ms since 1970; SHA-256 sums are 32 bytes. */
export interface Schema {
  sheets: {
    id: string;
    /** Raised when the sheet is put back to an older state. */
    generation: number;
    created_at: number;
  };
  documents: {
    id: Generated<number>;
    sheet_id: string;
    name: string;
    /** The number of the newest update. */
    head: number;
    /** Bytes of all updates together. */
    size: number;
  };
  updates: {
    document_id: number;
    seq: number;
    at: number;
    bytes: Uint8Array;
  };
  links: {
    id: string;
    sheet_id: string;
    role: string;
    secret_sha256: Uint8Array;
    label: string;
    created_at: number;
    revoked_at: number | null;
  };
  /** A browser, known by its cookie. */
  devices: {
    id_sha256: Uint8Array;
    created_at: number;
    seen_at: number;
  };
  grants: {
    device_sha256: Uint8Array;
    link_id: string;
    created_at: number;
  };
  /** Bytes beside a sheet: its reference pictures. */
  blobs: {
    sheet_id: string;
    /** SHA-256 of the bytes, base64url. */
    id: string;
    media_type: string;
    /** Bytes. */
    size: number;
    bytes: Uint8Array;
    created_at: number;
  };
}

/** Where the two databases say the same thing in different words. */
export interface Dialect {
  readonly name: "sqlite" | "postgres";
  readonly bytes: "blob" | "bytea";
  /** A key that counts itself. */
  readonly counted: "integer" | "bigserial";
}

export const SQLITE: Dialect = { name: "sqlite", bytes: "blob", counted: "integer" };
export const POSTGRES: Dialect = { name: "postgres", bytes: "bytea", counted: "bigserial" };
