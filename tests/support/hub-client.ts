import * as decoding from "lib0/decoding";
import WebSocket from "ws";
import * as Y from "yjs";
import type { DocumentName } from "../../shared/document-name";
import {
  type Going,
  type Hello,
  type Refused,
  readGoing,
  readHello,
  readRefused,
  readRole,
  readSaved,
  readStorage,
  type Storage,
} from "../../shared/hub-message";
import {
  type AwarenessEntry,
  encodeAwareness,
  encodeLive,
  encodeSync,
  isUpdateFrame,
  MESSAGE,
  readAwareness,
  readRelayedLive,
  SYNC,
} from "../../shared/protocol";
import type { Role } from "../../shared/role";

export interface ClientOptions {
  /** http address of the hub. */
  readonly url: string;
  readonly sheet: string;
  readonly document?: DocumentName;
  readonly cookie?: string;
  readonly origin?: string;
  /** Awareness client id; the document's own if it is not given. */
  readonly client?: number;
  /** Under which generation the page knows the document it brings. */
  readonly generation?: number;
  /** A document that the page brings along. */
  readonly doc?: Y.Doc;
}

/** A page without a screen: a socket, a document, and everything the hub said. */
export class HubClient {
  readonly doc: Y.Doc;
  readonly socket: WebSocket;
  readonly client: number;
  /** Types of the frames that came, in order. */
  readonly heard: number[] = [];
  readonly refused: Refused[] = [];
  readonly storage: Storage[] = [];
  /** What ROLE said, in order. */
  readonly roles: Role[] = [];
  readonly going: Going[] = [];
  readonly live: { readonly client: number; readonly payload: number[] }[] = [];
  readonly presence: AwarenessEntry[] = [];
  hello: Hello | null = null;
  synced = false;
  /** Update frames sent, and how many of them are committed. */
  sent = 0;
  saved = 0;
  closed: number | null = null;
  private readonly watchers = new Set<() => void>();

  constructor(socket: WebSocket, { doc = new Y.Doc(), client }: ClientOptions) {
    this.doc = doc;
    this.socket = socket;
    this.client = client ?? doc.clientID;
    doc.on("update", (update: Uint8Array, origin: unknown) => {
      if (origin !== this) this.send(encodeSync(SYNC.update, update));
    });
    socket.on("message", (data: Buffer) => this.hear(data));
    socket.on("error", () => {});
    socket.on("close", (code) => {
      this.closed = code;
      this.look();
    });
  }

  /** Sends a frame, counting it as a page does. */
  send(frame: Uint8Array): void {
    if (this.socket.readyState !== WebSocket.OPEN) return;
    if (isUpdateFrame(frame)) this.sent++;
    this.socket.send(frame);
  }

  draw(id: string, value: unknown = id): void {
    this.doc.getMap("strokes").set(id, value);
  }

  strokes(): string[] {
    return [...this.doc.getMap("strokes").keys()].sort();
  }

  /** Presence under this page's own client id, or under another's. */
  say(state: unknown, clock: number, client = this.client): void {
    this.send(encodeAwareness([{ client, clock, state: JSON.stringify(state) }]));
  }

  sendLive(...payload: number[]): void {
    this.send(encodeLive(Uint8Array.from(payload)));
  }

  /** Everything sent so far is committed. */
  allSaved(): Promise<void> {
    return this.until(() => this.saved === this.sent);
  }

  /** Resolves as soon as it holds; looked at whenever the hub has said something. */
  until(holds: () => boolean): Promise<void> {
    return new Promise((resolve) => {
      const look = () => {
        if (!holds()) return;
        this.watchers.delete(look);
        resolve();
      };
      this.watchers.add(look);
      look();
    });
  }

  /** Resolves once the hub has answered a question asked now, and so has done all that came before. */
  async roundTrip(): Promise<void> {
    const answers = () => this.heard.filter((type) => type === MESSAGE.awareness).length;
    const before = answers();
    this.send(Uint8Array.of(MESSAGE.queryAwareness));
    await this.until(() => answers() > before);
  }

  async close(): Promise<void> {
    this.socket.close();
    await this.until(() => this.closed !== null);
  }

  private hear(data: Uint8Array): void {
    const decoder = decoding.createDecoder(new Uint8Array(data));
    const type = decoding.readVarUint(decoder);
    this.heard.push(type);
    if (type === MESSAGE.sync) this.hearSync(decoder);
    if (type === MESSAGE.awareness) {
      this.presence.push(...readAwareness(decoding.readVarUint8Array(decoder)));
    }
    if (type === MESSAGE.live) {
      const { client, payload } = readRelayedLive(decoder);
      this.live.push({ client, payload: [...payload] });
    }
    if (type === MESSAGE.hello) this.hello = readHello(decoder);
    if (type === MESSAGE.saved) this.saved = readSaved(decoder);
    if (type === MESSAGE.refused) this.refused.push(readRefused(decoder));
    if (type === MESSAGE.role) this.roles.push(readRole(decoder));
    if (type === MESSAGE.going) this.going.push(readGoing(decoder));
    if (type === MESSAGE.storage) this.storage.push(readStorage(decoder));
    this.look();
  }

  private hearSync(decoder: decoding.Decoder): void {
    const kind = decoding.readVarUint(decoder);
    const body = decoding.readVarUint8Array(decoder);
    if (kind === SYNC.step1) {
      this.send(encodeSync(SYNC.step2, Y.encodeStateAsUpdate(this.doc, body)));
      return;
    }
    Y.applyUpdate(this.doc, body, this);
    if (kind === SYNC.step2) this.synced = true;
  }

  private look(): void {
    for (const watcher of [...this.watchers]) watcher();
  }
}

/** Opens a page and waits until it has what the hub has. Rejects with the status of a refusal. */
export async function openPage(options: ClientOptions): Promise<HubClient> {
  const page = await connect(options);
  page.send(encodeSync(SYNC.step1, Y.encodeStateVector(page.doc)));
  await page.until(() => (page.synced && page.saved >= 1) || page.closed !== null);
  return page;
}

/** The socket alone, with nothing said yet. Errors: Error "status N" if the hub refuses. */
export function connect(options: ClientOptions): Promise<HubClient> {
  const { url, sheet, document = "drawing", cookie, origin } = options;
  const query = new URLSearchParams();
  if (options.client !== undefined) query.set("client", String(options.client));
  if (options.generation !== undefined) query.set("generation", String(options.generation));
  const address = `${url.replace("http", "ws")}/sync/${sheet}/${document}?${query}`;
  const headers = cookie === undefined ? {} : { cookie };
  const socket = new WebSocket(address, { headers, ...(origin === undefined ? {} : { origin }) });
  const page = new HubClient(socket, options);
  return new Promise((resolve, reject) => {
    socket.once("open", () => resolve(page));
    socket.once("unexpected-response", (_request, response) => {
      socket.terminate();
      reject(new Error(`status ${response.statusCode}`));
    });
    socket.once("error", reject);
  });
}
