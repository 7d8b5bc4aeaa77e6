import WebSocket from "ws";
import * as Y from "yjs";
import { encodeSync, MESSAGE, SYNC } from "../../../shared/protocol";
import { connect, type HubClient } from "../../support/hub-client";
import { type Mark, markIn, scan } from "./strokes";
import type { Place } from "./targets";

/** A page that holds the document and applies everything. `isAnswered`: the server answers step 1, as a relay does not. */
export async function openWhole(place: Place, isAnswered: boolean): Promise<HubClient> {
  const doc = new Y.Doc();
  const page = await connect({ ...place, doc, client: doc.clientID });
  page.send(encodeSync(SYNC.step1, Y.encodeStateVector(doc)));
  if (isAnswered) await page.until(() => page.synced || page.closed !== null);
  if (page.closed !== null) throw new Error(`closed with ${page.closed}`);
  return page;
}

/** Strokes as they come into the page's document, those of others alone. */
export function watchStrokes(page: HubClient, seen: (mark: Mark) => void): void {
  page.doc.getMap("strokes").observe((event: Y.YMapEvent<unknown>) => {
    if (event.transaction.local) return;
    for (const id of event.keysChanged) seen(markIn(String(id)));
  });
}

/** A page that only looks for strokes in the frames, so that a burst measures the server and not us. */
export interface LightPage {
  send(frame: Uint8Array): void;
  /** Bytes read from the line so far, and those of them that only said SAVED. */
  read(): number;
  readonly savedBytes: () => number;
  readonly saved: () => number;
  close(): void;
}

const FRAME_HEADING = 2; // bytes of a WebSocket frame below 126

export async function openLight(
  { url, sheet, cookie }: Place,
  isAnswered: boolean,
  seen: (mark: Mark) => void,
): Promise<LightPage> {
  const client = new Y.Doc().clientID;
  const address = `${url.replace("http", "ws")}/sync/${sheet}/drawing?client=${client}`;
  const socket = new WebSocket(address, { headers: cookie === undefined ? {} : { cookie } });
  let savedBytes = 0;
  let saved = 0;
  const answered = new Promise<void>((resolve, reject) => {
    socket.on("message", (frame: Buffer) => {
      const [type, kind] = frame;
      scan(frame, seen);
      if (type === MESSAGE.saved) {
        savedBytes += FRAME_HEADING + frame.length;
        saved = readVarUint(frame);
      }
      if (type !== MESSAGE.sync) return;
      if (kind === SYNC.step1) socket.send(encodeSync(SYNC.step2, NOTHING));
      if (kind === SYNC.step2) resolve();
    });
    socket.on("close", (code) => reject(new Error(`closed with ${code}`)));
    socket.on("error", reject);
  });
  answered.catch(() => {}); // whoever waits for it hears of it
  await new Promise<void>((resolve, reject) => socket.once("open", resolve).once("error", reject));
  socket.send(encodeSync(SYNC.step1, Uint8Array.of(0)));
  if (isAnswered) await answered;
  return {
    send: (frame) => socket.send(frame),
    read: () => bytesRead(socket),
    savedBytes: () => savedBytes,
    saved: () => saved,
    close: () => socket.terminate(),
  };
}

const NOTHING = Uint8Array.of(0, 0); // an update without structs and deletes

/** What has come in over the line, with all of its headings. */
export function bytesRead(socket: WebSocket): number {
  return (socket as unknown as { readonly _socket: { readonly bytesRead: number } })._socket
    .bytesRead;
}

function readVarUint(frame: Buffer): number {
  let value = 0;
  for (let at = 1, weight = 1; at < frame.length; at++, weight *= 128) {
    value += ((frame[at] ?? 0) & 127) * weight;
    if ((frame[at] ?? 0) < 128) break;
  }
  return value;
}
