import { type CompactPoint, compact } from "../../server/store/compact";
import { SQLITE } from "../../server/store/schema";
import { openSqlite } from "../../server/store/sqlite";

/** A process that compacts a document and kills itself when it has come to a certain point, the nth time. */
const [file = "", documentId, point, nth] = process.argv.slice(2);
let left = Number(nth);
const order = {
  ...{ documentId: Number(documentId), by: `process ${process.pid}`, at: Date.now() },
  atLeast: { rows: 1, bytes: 1 },
};
await compact(openSqlite(file), SQLITE, order, (reached: CompactPoint) => {
  if (reached === point && --left === 0) process.kill(process.pid, "SIGKILL");
});
