import type { Role } from "../../shared/role";
import type { SheetId } from "../../shared/sheet-id";

/** Who did it: a device's hash, or null for the server itself. */
export type Doer = Uint8Array | null;

export interface NewLink {
  readonly link: string;
  readonly sheet: SheetId;
  readonly role: Role;
  readonly label: string;
  readonly secretSha256: Uint8Array;
  readonly at: number;
  /** From then on it opens nothing; null for never. */
  readonly expiresAt: number | null;
  readonly by: Doer;
}

/** What may be different about a link that is there. What is left out stays. */
export interface LinkChange {
  readonly sheet: SheetId;
  readonly link: string;
  readonly role?: Role | undefined;
  readonly label?: string | undefined;
  readonly expiresAt?: number | null | undefined;
  readonly at: number;
  readonly by: Doer;
}

export interface Revocation {
  readonly sheet: SheetId;
  readonly link: string;
  readonly at: number;
  readonly by: Doer;
}

export interface StoredLink {
  readonly link: string;
  readonly role: Role;
  readonly label: string;
  readonly createdAt: number;
  readonly expiresAt: number | null;
  readonly revokedAt: number | null;
  /** When somebody last came in by it; null for never. */
  readonly usedAt: number | null;
}

export interface Entry {
  readonly sheet: SheetId;
  readonly secretSha256: Uint8Array;
  readonly device: Uint8Array;
  readonly at: number;
}

export interface Grant {
  readonly role: Role;
  readonly link: string;
  /** When the link behind it ends; null for never. */
  readonly expiresAt: number | null;
}

export const AUDITED = [
  "sheet-made",
  "link-made",
  "link-changed",
  "link-revoked",
  "generation-raised",
  "restored",
] as const;
export type Audited = (typeof AUDITED)[number];

/** One change of who may come in, or of what is there, as the owner may read it later. */
export interface AuditRow {
  readonly at: number;
  /** The first twelve hex digits of the device's hash; "server" where no device did it. */
  readonly who: string;
  readonly what: Audited;
  /** The link or the sheet it was done to. */
  readonly subject: string;
  /** What changed, in a few words. */
  readonly detail: string;
}

/**
 * What every instance has to hear of at once, numbered in the order of commits. The subject is a link
 * of `link-revoked` and `link-changed`, a sheet of `generation-raised`.
 */
export interface ControlRow {
  readonly id: number;
  readonly at: number;
  readonly what: "link-revoked" | "link-changed" | "generation-raised";
  readonly subject: string;
}
