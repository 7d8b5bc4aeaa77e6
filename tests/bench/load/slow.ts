import type { HubClient } from "../../support/hub-client";
import { atMost, passed } from "./config";
import { memory } from "./cost";
import { openWhole } from "./pages";
import type { Figures } from "./round";
import type { Served } from "./targets";

const VALUES = 2400;
const BYTES = 16 * 1024; // 38 MB of them all
const AT_ONCE = 4;
const LONGEST_MS = 60_000;
const ROOM = "slow";
const ID = "the-same"; // each takes the place of the one before, so that the document stays small

/** 38 MB pass while everybody reads, and 38 MB more while one reader stands still. */
export async function slow(server: Served): Promise<Figures> {
  const isAnswered = server.target !== "relay";
  const open = async () => openWhole(await server.place(ROOM), isAnswered);
  const [writer, healthy, stalled] = [await open(), await open(), await open()];
  await passed(200);
  const before = memory(server.pid).now;
  const reading = await pass(server, writer, healthy);
  stalled.socket.pause();
  const standing = await pass(server, writer, healthy);
  for (const page of [writer, healthy, stalled]) page.socket.terminate();
  return { passing: reading - before, growth: Math.max(0, standing - reading) };
}

/** Answers the most memory that it took, MiB. */
async function pass(server: Served, writer: HubClient, healthy: HubClient): Promise<number> {
  let heard = 0;
  let most = memory(server.pid).now;
  const look = () => {
    most = Math.max(most, memory(server.pid).now);
  };
  const count = () => heard++;
  healthy.doc.on("update", count);
  for (let value = 1; value <= VALUES; value++) {
    writer.draw(ID, new Uint8Array(BYTES).fill(value));
    if (value % AT_ONCE === 0) await passed(8);
    if (value % 40 === 0) look();
  }
  await atMost(LONGEST_MS, () => heard >= VALUES);
  healthy.doc.off("update", count);
  look();
  return most;
}
