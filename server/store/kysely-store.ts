import type { Kysely } from "kysely";
import { listAudit } from "./audit";
import { loadBlob, putBlob } from "./blobs";
import { compact } from "./compact";
import { controlAfter, probe } from "./control";
import { loadDocument } from "./documents";
import { enter, grantOf } from "./grants";
import { addLink, changeLink, listLinks, revokeLink } from "./links";
import { migrate } from "./migrations";
import { listQuarantine, quarantine } from "./quarantine";
import type { Dialect, Schema } from "./schema";
import { createSheet, raiseGeneration } from "./sheets";
import type { Store } from "./store";
import { toStoreError } from "./store-error";
import { appendUpdates } from "./updates";

/** The store over one database, whichever of the two it is. Errors: StoreError from every method. */
export async function openKyselyStore(db: Kysely<Schema>, dialect: Dialect): Promise<Store> {
  await named(migrate(db, dialect));
  return kyselyStore(db, dialect);
}

/** The same over tables that are known to be of the newest form. */
export function kyselyStore(db: Kysely<Schema>, dialect: Dialect): Store {
  return {
    createSheet: (sheet) => named(createSheet(db, sheet)),
    loadDocument: (sheet, name) => named(loadDocument(db, dialect, { sheet, name })),
    appendUpdates: (batch) => named(appendUpdates(db, batch)),
    raiseGeneration: (sheet, by, at) => named(raiseGeneration(db, { sheet, by, at })),
    compact: (order) => named(compact(db, dialect, order)),
    quarantine: (item) => named(quarantine(db, item)),
    listQuarantine: (documentId) => named(listQuarantine(db, documentId)),
    addLink: (link) => named(addLink(db, link)),
    listLinks: (sheet) => named(listLinks(db, sheet)),
    changeLink: (change) => named(changeLink(db, change)),
    revokeLink: (revocation) => named(revokeLink(db, revocation)),
    enter: (entry) => named(enter(db, entry)),
    grantOf: (device, sheet, at) => named(grantOf(db, { device, sheet, at })),
    listAudit: (sheet, most) => named(listAudit(db, sheet, most)),
    controlAfter: (id) => named(controlAfter(db, id)),
    putBlob: (blob) => named(putBlob(db, blob)),
    loadBlob: (sheet, blob) => named(loadBlob(db, sheet, blob)),
    probe: (at) => named(probe(db, at)),
    close: () => named(db.destroy()),
  };
}

async function named<Result>(work: Promise<Result>): Promise<Result> {
  try {
    return await work;
  } catch (error) {
    throw toStoreError(error);
  }
}
