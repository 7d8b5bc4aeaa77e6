import type { Role } from "./role";

/** What the HTTP doors answer, as plain types: a page can read them without loading a parser. */

/** 201 of POST /api/sheets. The secrets are said this once. */
export interface SheetCreated {
  readonly sheet: string;
  readonly links: { readonly [R in Role]: string };
}

/** 200 of GET /api/sheets/:id. */
export interface SheetSeen {
  readonly sheet: string;
  readonly role: Role;
}

/** 201 of POST /api/sheets/:id/links. The secret is said this once. */
export interface LinkCreated {
  readonly link: string;
  readonly role: Role;
  readonly label: string;
  readonly expiresAt: number | null;
  readonly secret: string;
}

/** One line of GET /api/sheets/:id/links. Times are ms since 1970. */
export interface LinkListed {
  readonly link: string;
  readonly role: Role;
  readonly label: string;
  readonly createdAt: number;
  /** From then on it opens nothing; null for never. */
  readonly expiresAt: number | null;
  readonly revokedAt: number | null;
  /** When somebody last came in by it; null for never. */
  readonly usedAt: number | null;
}

export interface LinksListed {
  readonly links: readonly LinkListed[];
}

/** 200 of GET /api/sheets/:id/audit: who changed links, or what is there, the newest first. */
export interface AuditListed {
  readonly rows: readonly AuditListedRow[];
}

export interface AuditListedRow {
  /** ms since 1970. */
  readonly at: number;
  /** The beginning of a device's hash, or "server". */
  readonly who: string;
  /** `sheet-made`, `link-made`, `link-changed`, `link-revoked`, `generation-raised` or `restored`. */
  readonly what: string;
  readonly subject: string;
  readonly detail: string;
}

/** 201 of POST /api/sheets/:id/pictures. Base64url SHA-256 of the bytes: the same picture, the same id. */
export interface PictureStored {
  readonly picture: string;
}

/** Every answer that is not a success. Branch on the code; the message is for a person. */
export interface ApiError {
  readonly code: string;
  readonly message: string;
}

/** What a sheet can be started from besides a brief: a real walk, and the drawn demo. */
export const EXAMPLES = ["captured-walk", "brindle"] as const;
export type ExampleName = (typeof EXAMPLES)[number];
