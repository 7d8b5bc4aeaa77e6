import { atMost, passed } from "./config";
import { memory } from "./cost";
import { openWhole } from "./pages";
import type { Figures } from "./round";
import type { Served } from "./targets";

const VALUES = 2400;
const BYTES = 16 * 1024; // 38 MB of them all
const AT_ONCE = 4;
const LONGEST_MS = 30_000;
const ROOM = "slow";
const ID = "the-same"; // each takes the place of the one before, so that the document stays small

/** One reader stands still while 38 MB pass him. */
export async function slow(server: Served): Promise<Figures> {
  const isAnswered = server.target !== "relay";
  const open = async () => openWhole(await server.place(ROOM), isAnswered);
  const [writer, healthy, stalled] = [await open(), await open(), await open()];
  let heard = 0;
  healthy.doc.on("update", () => heard++);
  await passed(200);
  stalled.socket.pause();
  const before = memory(server.pid).now;
  let most = before;
  for (let value = 1; value <= VALUES; value++) {
    writer.draw(ID, new Uint8Array(BYTES).fill(value));
    if (value % AT_ONCE === 0) await passed(8);
    if (value % 40 === 0) most = Math.max(most, memory(server.pid).now);
  }
  await atMost(LONGEST_MS, () => heard >= VALUES);
  most = Math.max(most, memory(server.pid).now);
  for (const page of [writer, healthy, stalled]) page.socket.terminate();
  return { growth: most - before };
}
