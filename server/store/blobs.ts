import type { Kysely } from "kysely";
import type { SheetId } from "../../shared/sheet-id";
import type { Schema } from "./schema";
import type { NewBlob, StoredBlob } from "./store";

export async function putBlob(
  db: Kysely<Schema>,
  { sheet, blob, mediaType, bytes, at, sheetBytes }: NewBlob,
): Promise<"stored" | "sheet-full"> {
  return db.transaction().execute(async (tx) => {
    // Takes the sheet's row, so that of two at once the second counts the first one's bytes.
    await tx
      .updateTable("sheets")
      .set((eb) => ({ created_at: eb.ref("created_at") }))
      .where("id", "=", sheet)
      .execute();
    const kept = await tx
      .selectFrom("blobs")
      .select(["id", "size"])
      .where("sheet_id", "=", sheet)
      .execute();
    if (kept.some(({ id }) => id === blob)) return "stored";
    const before = kept.reduce((sum, { size }) => sum + size, 0);
    if (before + bytes.length > sheetBytes) return "sheet-full";
    await tx
      .insertInto("blobs")
      .values({
        sheet_id: sheet,
        id: blob,
        media_type: mediaType,
        size: bytes.length,
        bytes,
        created_at: at,
      })
      .execute();
    return "stored";
  });
}

export async function loadBlob(
  db: Kysely<Schema>,
  sheet: SheetId,
  blob: string,
): Promise<StoredBlob | null> {
  const found = await db
    .selectFrom("blobs")
    .select(["media_type", "bytes"])
    .where("sheet_id", "=", sheet)
    .where("id", "=", blob)
    .executeTakeFirst();
  return found === undefined ? null : { mediaType: found.media_type, bytes: found.bytes };
}
