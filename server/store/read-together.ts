import { type Kysely, sql } from "kysely";
import type { Dialect, Schema } from "./schema";

/** Reads in several steps from one state of the database, whoever writes meanwhile, and bars nobody. */
export async function readTogether<Result>(
  db: Kysely<Schema>,
  dialect: Dialect,
  read: (together: Kysely<Schema>) => Promise<Result>,
): Promise<Result> {
  return db.connection().execute(async (together) => {
    await sql.raw(dialect.beginReading).execute(together);
    try {
      const result = await read(together);
      await sql.raw("commit").execute(together);
      return result;
    } catch (error) {
      await sql.raw("rollback").execute(together);
      throw error;
    }
  });
}
