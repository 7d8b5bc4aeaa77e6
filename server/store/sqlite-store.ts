import { appendStraight } from "./append-straight";
import { kyselyStore, openKyselyStore } from "./kysely-store";
import { SQLITE } from "./schema";
import type { SqliteConnection } from "./sqlite";
import type { Store } from "./store";
import { toStoreError } from "./store-error";
import { statementsOf } from "./updates";

/**
 * The store over an SQLite file, in the thread that calls. `migrated` says that another connection has
 * brought the tables to their newest form.
 *
 * Errors: StoreError from every method
 */
export async function openSqliteStore(
  connection: SqliteConnection,
  { migrated = false } = {},
): Promise<Store> {
  const { db } = connection;
  const store = migrated ? kyselyStore(db, SQLITE) : await openKyselyStore(db, SQLITE);
  const statements = statementsOf(db);
  return {
    ...store,
    async appendUpdates(batch) {
      try {
        return appendStraight(connection, statements, batch) ?? (await store.appendUpdates(batch));
      } catch (error) {
        throw toStoreError(error);
      }
    },
  };
}
