import type { Generated } from "kysely";

/** The tables, alike in SQLite and PostgreSQL. Times are ms since 1970; SHA-256 sums are 32 bytes. */
export interface Schema {
  sheets: {
    id: string;
    created_at: number;
  };
  documents: {
    id: Generated<number>;
    sheet_id: string;
    name: string;
    /**
     * Raised when the document is put back to an older state. It stands in the row that every append
     * locks, so that none can slip in under the old one.
     */
    generation: number;
    /** The number of the newest update. */
    head: number;
    /** The number up to which the newest snapshot goes; 0 while there is none. */
    snap: number;
    /** Bytes of the newest snapshot. */
    snap_bytes: number;
    /** Bytes of the newest snapshot and of all updates after it. */
    size: number;
    /** The batch that was appended last: it is not appended again. */
    last_batch: string;
    /** Who is compacting it, and until when that counts. */
    lease_by: string;
    lease_until: number;
  };
  updates: {
    document_id: number;
    seq: number;
    at: number;
    bytes: Uint8Array;
  };
  /** A document up to and with the update of that number, in one piece. */
  snapshots: {
    document_id: number;
    seq: number;
    at: number;
    /** Of the bytes. */
    sha256: Uint8Array;
    bytes: Uint8Array;
  };
  /** Which device writes under a Yjs client id. */
  owners: {
    document_id: number;
    client_id: number;
    device_sha256: Uint8Array;
  };
  /** Bytes that a document could not take. */
  quarantine: {
    id: Generated<number>;
    document_id: number;
    at: number;
    device_sha256: Uint8Array | null;
    reason: string;
    /** How many bytes there were; what is kept may be their beginning. */
    size: number;
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
    expires_at: number | null;
    used_at: number | null;
  };
  audit: {
    id: Generated<number>;
    at: number;
    sheet_id: string;
    who: string;
    what: string;
    subject: string;
    detail: string;
  };
  /** What other instances have to hear of; numbered by a counter, so that numbers commit in order. */
  control: {
    id: number;
    at: number;
    what: string;
    subject: string;
  };
  /** `control`: the newest number. `probe`: when it was last found that writing works. */
  counters: {
    name: string;
    value: number;
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
  /** Begins a transaction that sees one state of the database and changes nothing. */
  readonly beginReading: string;
}

export const SQLITE: Dialect = {
  name: "sqlite",
  bytes: "blob",
  counted: "integer",
  beginReading: "begin deferred",
};
export const POSTGRES: Dialect = {
  name: "postgres",
  bytes: "bytea",
  counted: "bigserial",
  beginReading: "begin isolation level repeatable read read only",
};
