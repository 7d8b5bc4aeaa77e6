import type { Kysely } from "kysely";
import { loadBlob, putBlob } from "./blobs";
import { enter, grantOf } from "./grants";
import { addLink, listLinks, revokeLink } from "./links";
import { migrate } from "./migrations";
import type { Dialect, Schema } from "./schema";
import { createSheet, loadDocument } from "./sheets";
import type { Store } from "./store";
import { toStoreError } from "./store-error";
import { appendUpdates } from "./updates";

/** The store over one database, whichever of the two it is. Errors: StoreError from every method. */
export async function openKyselyStore(db: Kysely<Schema>, dialect: Dialect): Promise<Store> {
  await named(migrate(db, dialect));
  return {
    createSheet: (sheet) => named(createSheet(db, sheet)),
    loadDocument: (sheet, name) => named(loadDocument(db, sheet, name)),
    appendUpdates: (updates) => named(appendUpdates(db, updates)),
    addLink: (link) => named(addLink(db, link)),
    listLinks: (sheet) => named(listLinks(db, sheet)),
    revokeLink: (sheet, link, at) => named(revokeLink(db, { sheet, link, at })),
    enter: (entry) => named(enter(db, entry)),
    grantOf: (device, sheet) => named(grantOf(db, device, sheet)),
    putBlob: (blob) => named(putBlob(db, blob)),
    loadBlob: (sheet, blob) => named(loadBlob(db, sheet, blob)),
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
