import type { DocumentName } from "../../shared/document-name";
import type { SheetId } from "../../shared/sheet-id";
import type {
  AuditRow,
  ControlRow,
  Doer,
  Entry,
  Grant,
  LinkChange,
  NewLink,
  Revocation,
  StoredLink,
} from "./access-records";
import type { Compacted, CompactOrder } from "./compact";
import type { Appended, NewBatch, StoredDocument } from "./document-records";
import type { NewQuarantined, Quarantined } from "./quarantine";

/**
 * What must outlive the process. Every promise that resolves speaks of something committed: with
 * SQLite synced to the disk, with PostgreSQL as far as its own settings promise.
 *
 * Times are ms since 1970. Secrets come in as SHA-256 and never otherwise.
 */
export interface Store {
  /** A sheet with its first bytes and links, all or nothing. */
  createSheet(sheet: NewSheet): Promise<void>;
  /**
   * One document, in the order in which it was committed; null if there is none.
   *
   * Errors: StoreError "damaged" if what is stored does not make a whole document
   */
  loadDocument(sheet: SheetId, name: DocumentName): Promise<StoredDocument | null>;
  /**
   * Adds updates, in the order given, in one transaction. Called again with the same batch, after a
   * failure that may have been none, it adds nothing twice. A document whose generation is another by
   * now, or whose claims another device has, is refused as a whole; the others are stored.
   */
  appendUpdates(batch: NewBatch): Promise<Appended>;
  /**
   * Puts a sheet's documents under a new generation: rooms that hold the old one can store nothing
   * any more, and pages that knew it start anew. Answers the new one; null if there is no such sheet.
   */
  raiseGeneration(sheet: SheetId, by: Doer, at: number): Promise<number | null>;
  /** Makes a document quicker to load: a snapshot takes the place of most of its updates. */
  compact(order: CompactOrder): Promise<Compacted>;

  /** Keeps bytes that a document could not take, for whoever looks into it. The oldest give way. */
  quarantine(item: NewQuarantined): Promise<void>;
  /** What of a document lies there, the newest first. */
  listQuarantine(documentId: number): Promise<Quarantined[]>;

  addLink(link: NewLink): Promise<void>;
  /** Every link of a sheet, revoked and expired ones too, oldest first. */
  listLinks(sheet: SheetId): Promise<StoredLink[]>;
  /** Errors: StoreError "last-owner" if nobody could own the sheet for good any more. */
  changeLink(change: LinkChange): Promise<"changed" | "no-such-link">;
  /** Errors: StoreError "last-owner" if nobody could own the sheet for good any more. */
  revokeLink(revocation: Revocation): Promise<"revoked" | "no-such-link">;

  /** Lets a device in by a link's secret. Null if no such link is open on this sheet. */
  enter(entry: Entry): Promise<Grant | null>;
  /** What a device may do on a sheet: its strongest link that is neither revoked nor expired. */
  grantOf(device: Uint8Array, sheet: SheetId, at: number): Promise<Grant | null>;
  /** Who changed what about a sheet, the newest first, at most so many. */
  listAudit(sheet: SheetId, most: number): Promise<AuditRow[]>;
  /** What happened after that number, in order. 0 tells all that is still kept, which is a day. */
  controlAfter(id: number): Promise<ControlRow[]>;

  /**
   * Keeps bytes beside a sheet, under the sum that names them; the same bytes are kept once. Nothing
   * is kept that would take the sheet's blobs over `sheetBytes` together.
   */
  putBlob(blob: NewBlob): Promise<"stored" | "sheet-full">;
  /** Null if the sheet has no such blob, whatever another sheet has. */
  loadBlob(sheet: SheetId, blob: string): Promise<StoredBlob | null>;

  /** Writes something, to find out whether it can. */
  probe(at: number): Promise<void>;
  close(): Promise<void>;
}

export interface NewSheet {
  readonly sheet: SheetId;
  readonly at: number;
  readonly by: Doer;
  readonly documents: { readonly [Name in DocumentName]: Uint8Array };
  readonly links: readonly Omit<NewLink, "sheet" | "at" | "by" | "expiresAt">[];
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
