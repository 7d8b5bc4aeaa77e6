import { newLinkId, sha256 } from "../../../server/access/secret";
import type { NewLink } from "../../../server/store/access-records";
import type { NewUpdate } from "../../../server/store/document-records";
import type { NewSheet, Store } from "../../../server/store/store";
import { ROLES, type Role } from "../../../shared/role";
import type { SheetId } from "../../../shared/sheet-id";

export interface StoreUnderTest {
  readonly store: Store;
  /** The same data, after everything was closed and opened again. */
  reopen(): Promise<Store>;
}

/** What every sentence of the contract has: a store, and a sheet in it that no other sentence has. */
export interface StoreCase {
  readonly store: Store;
  readonly sheet: SheetId;
  /** Closes and opens it all; `store` is the new one from then on. */
  reopen(): Promise<void>;
  documentId(name?: "drawing" | "critique"): Promise<number>;
  /** Appends to the drawing, as a room of that generation would. */
  append(
    bytes: readonly Uint8Array[],
    more?: Partial<NewUpdate>,
  ): ReturnType<Store["appendUpdates"]>;
}

export const BYTES = Uint8Array.of(0, 255, 0, 1, 128);

let batches = 0;
export function batchOf(updates: readonly NewUpdate[]) {
  return { id: `batch ${++batches}`, updates };
}

export function device(number: number): Uint8Array {
  return sha256(`device ${number}`);
}

export function secretOf(sheet: SheetId, role: Role): Uint8Array {
  return sha256(`${sheet} ${role}`);
}

export function linkOf(sheet: SheetId, role: Role, label: string): Omit<NewLink, "at"> {
  const secretSha256 = sha256(`${sheet} ${role} ${label}`);
  return { link: newLinkId(), sheet, role, label, secretSha256, expiresAt: null, by: device(0) };
}

export function newSheetOf(sheet: SheetId): NewSheet {
  return {
    ...{ sheet, at: 1, by: device(0) },
    documents: { drawing: Uint8Array.of(1), critique: Uint8Array.of(2) },
    links: ROLES.map((role) => ({
      ...{ link: newLinkId(), role, label: "" },
      secretSha256: secretOf(sheet, role),
    })),
  };
}
