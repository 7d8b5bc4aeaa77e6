import type { Storage } from "../shared/hub-message";
import type { Connection, DiskState } from "./connection";

/**
 * How the disk does, document by document: as for everybody, but for a document that cannot be stored
 * while others can. Nothing more is taken for it then, nor for any while the disk is full: what a page
 * sends waits with the page, which knows that it is not saved.
 */
export interface Disks {
  of(documentId: number): DiskState;
  changed(storage: Storage, documentId: number | null): void;
}

export function createDisks({
  connections,
  global,
}: {
  readonly connections: ReadonlySet<Connection>;
  readonly global: () => Storage;
}): Disks {
  const ailing = new Map<number, Storage>();
  const of = (documentId: number): DiskState => {
    const own = ailing.get(documentId);
    const storage = own ?? global();
    return { storage, readOnly: own !== undefined || storage.state === "full" };
  };
  return {
    of,
    changed(storage, documentId) {
      if (documentId !== null && storage.state === "ok") ailing.delete(documentId);
      else if (documentId !== null) ailing.set(documentId, storage);
      for (const connection of connections) {
        const seated = connection.documentId();
        const concerned = documentId === null || documentId === seated;
        if (seated !== null && concerned) connection.tellStorage(of(seated));
      }
    },
  };
}
