import type { DocumentName } from "../../shared/document-name";
import type { Role } from "../../shared/role";
import type { SheetId } from "../../shared/sheet-id";

/**
 * What must outlive the process. Every promise that resolves speaks of something committed: with
 * SQLite synced to the disk, with PostgreSQL as far as its own settings promise.
 *
 * Times are ms since 1970. Secrets come in as SHA-256 and never otherwise.
 */
export interface Store {
  /** A sheet with its first bytes and links, all or nothing. */
  createSheet(sheet: NewSheet): Promise<void>;
  /** One document with every update, in the order they were committed; null if there is none. */
  loadDocument(sheet: SheetId, name: DocumentName): Promise<StoredDocument | null>;
  /**
   * Adds updates, in the order given, in one transaction. Called again after a failure that was
   * none it stores them twice, which is the same to a document as once.
   */
  appendUpdates(updates: readonly NewUpdate[]): Promise<void>;

  addLink(link: NewLink): Promise<void>;
  /** Every link of a sheet, revoked ones too, oldest first. */
  listLinks(sheet: SheetId): Promise<StoredLink[]>;
  /** Errors: StoreError "last-owner" if nobody could own the sheet any more. */
  revokeLink(sheet: SheetId, link: string, at: number): Promise<"revoked" | "no-such-link">;

  /** Lets a device in by a link's secret. Null if no such link is open on this sheet. */
  enter(entry: Entry): Promise<Grant | null>;
  /** What a device may do on a sheet: its strongest link that is not revoked. */
  grantOf(device: Uint8Array, sheet: SheetId): Promise<Grant | null>;

  /**
   * Keeps bytes beside a sheet, under the sum that names them; the same bytes are kept once. Nothing
   * is kept that would take the sheet's blobs over `sheetBytes` together.
   */
  putBlob(blob: NewBlob): Promise<"stored" | "sheet-full">;
  /** Null if the sheet has no such blob, whatever another sheet has. */
  loadBlob(sheet: SheetId, blob: string): Promise<StoredBlob | null>;

  close(): Promise<void>;
}

export interface NewSheet {
  readonly sheet: SheetId;
  readonly at: number;
  readonly documents: { readonly [Name in DocumentName]: Uint8Array };
  readonly links: readonly Omit<NewLink, "sheet" | "at">[];
}

export interface StoredDocument {
  readonly documentId: number;
  readonly generation: number;
  readonly updates: readonly Uint8Array[];
}

export interface NewUpdate {
  readonly documentId: number;
  readonly at: number;
  readonly bytes: Uint8Array;
}

export interface NewLink {
  readonly link: string;
  readonly sheet: SheetId;
  readonly role: Role;
  readonly label: string;
  readonly secretSha256: Uint8Array;
  readonly at: number;
}

export interface StoredLink {
  readonly link: string;
  readonly role: Role;
  readonly label: string;
  readonly createdAt: number;
  readonly revokedAt: number | null;
}

export interface NewBlob {
  readonly sheet: SheetId;
  /** SHA-256 of the bytes, base64url. */
  readonly blob: string;
  readonly mediaType: string;
  readonly bytes: Uint8Array;
  readonly at: number;
  /** How much all blobs of the sheet may hold together. */
  readonly sheetBytes: number;
}

export interface StoredBlob {
  readonly mediaType: string;
  readonly bytes: Uint8Array;
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
}
