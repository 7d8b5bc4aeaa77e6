import { once } from "node:events";
import WebSocket from "ws";
import { type Bytes, readVaruint } from "./raw-bytes";
import { carriesUpdate, DRAWN, syncFrame } from "./raw-frames";

export interface StrangerOptions {
  /** http address of the hub. */
  readonly url: string;
  readonly sheet: string;
  readonly cookie: string;
  /** The client id it says it has. */
  readonly client: number;
}

/** A socket that sends whatever it likes, and reads of the answers what it needs. */
export interface Stranger {
  /** Answers the number of the update frame; 0 if it is none. */
  send(frame: Bytes | Uint8Array | string): number;
  /** The code with which a frame was refused, by its number. */
  readonly refusals: ReadonlyMap<number, string>;
  saved(): number;
  /** Resolves when all that was sent is done, or the socket closed. */
  done(): Promise<void>;
  /** The close code; null while it is open. */
  closed(): number | null;
  leave(): Promise<void>;
}

const [SAVED, REFUSED] = [65, 66];

export async function openStranger(options: StrangerOptions): Promise<Stranger> {
  const { url, sheet, cookie, client } = options;
  const address = `${url.replace("http", "ws")}/sync/${sheet}/drawing?client=${client}`;
  const socket = new WebSocket(address, { headers: { cookie } });
  const refusals = new Map<number, string>();
  let waiting: (() => void) | null = null;
  let awaited = 0;
  let updates = 0;
  let saved = 0;
  let closed: number | null = null;
  const go = () => {
    waiting?.();
    waiting = null;
  };
  socket.on("message", (data: Buffer) => {
    const { value: type, end } = readVaruint(data, 0);
    if (type === SAVED) saved = readVaruint(data, end).value;
    if (type === REFUSED) {
      const frame = readVaruint(data, end);
      const length = readVaruint(data, frame.end);
      refusals.set(frame.value, data.toString("utf8", length.end, length.end + length.value));
      if (frame.value === awaited) go();
    }
  });
  const gone = once(socket, "close") as Promise<[number]>;
  void gone.then(([code]) => {
    closed = code;
    go();
  });
  socket.on("error", () => {});
  await Promise.race([once(socket, "open"), gone]);
  const send = (frame: Bytes | Uint8Array | string) => {
    if (socket.readyState !== WebSocket.OPEN) return 0;
    if (typeof frame === "string") {
      socket.send(frame);
      return 0;
    }
    const bytes = frame instanceof Uint8Array ? frame : Uint8Array.from(frame);
    socket.send(bytes);
    return carriesUpdate([bytes[0] ?? 255, bytes[1] ?? 255]) ? ++updates : 0;
  };
  return {
    ...{ send, refusals },
    saved: () => saved,
    closed: () => closed,
    done: () =>
      new Promise((resolve) => {
        if (closed !== null) return resolve();
        waiting = resolve;
        // An update of no bytes: its refusal says that all before it is done, and nobody else's doings look like it.
        awaited = send(syncFrame(DRAWN, []));
      }),
    async leave() {
      socket.close();
      await gone;
    },
  };
}
