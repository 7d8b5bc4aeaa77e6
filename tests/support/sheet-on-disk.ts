import { join } from "node:path";
import Database from "libsql";
import * as Y from "yjs";

/** What a hub's database holds of a sheet's drawing, read by another process than the hub's. */
export interface SheetOnDisk {
  /** How many strokes are committed at this moment. */
  strokes(): number;
  /** Holds the database's write lock until it is let go. */
  hold(): () => void;
  close(): void;
}

export function readOnDisk(dataDir: string, sheet: string): SheetOnDisk {
  const db = new Database(join(dataDir, "heelstrip.db"));
  const { id } = db
    .prepare("select id from documents where sheet_id = ? and name = 'drawing'")
    .get([sheet]) as { id: number };
  const later = db.prepare("select seq, bytes from updates where document_id = ? and seq > ?");
  const drawing = new Y.Doc();
  let read = 0;
  return {
    strokes() {
      for (const { seq, bytes } of later.all([id, read]) as { seq: number; bytes: ArrayBuffer }[]) {
        Y.applyUpdate(drawing, new Uint8Array(bytes));
        read = Math.max(read, seq);
      }
      return drawing.getMap("strokes").size;
    },
    hold() {
      const holder = new Database(join(dataDir, "heelstrip.db"));
      holder.exec("begin immediate");
      return () => {
        holder.exec("rollback");
        holder.close();
      };
    },
    close: () => db.close(),
  };
}
