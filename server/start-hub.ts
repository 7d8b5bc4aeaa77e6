import { randomBytes } from "node:crypto";
import { mkdirSync } from "node:fs";
import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import { join } from "node:path";
import type { Duplex } from "node:stream";
import { WebSocketServer } from "ws";
import { HUB_LIMITS } from "../shared/limits";
import { type Address, isOverTls } from "./access/origin";
import { sendJson } from "./api/answer";
import { createApi } from "./api/api";
import type { MakeSheet } from "./api/doors";
import { type Clock, systemClock } from "./clock";
import { createHub, type Hub } from "./hub";
import { listen } from "./listen";
import type { PrepareDocument } from "./rooms";
import { guardAnswer, guardPage } from "./security-headers";
import { lockFolder } from "./store/lock-file";
import { openSqliteInWorker } from "./store/sqlite-in-worker";
import type { Store } from "./store/store";
import { createUpgrade } from "./upgrade";

/** Whatever serves the pages; a hub alone has none. */
export interface Pages {
  handle(request: IncomingMessage, response: ServerResponse): Promise<void>;
  /** Sockets that are not ours: the reloader's, while developing. */
  upgrade?(request: IncomingMessage, socket: Duplex, head: Buffer): Promise<void>;
}

export interface HubOptions {
  readonly dataDir: string;
  /** 0 takes one that is free. */
  readonly port: number;
  readonly host?: string;
  readonly publicUrl?: URL | null;
  readonly trustProxy?: boolean;
  readonly development?: boolean;
  readonly makeSheet: MakeSheet;
  readonly prepareDocument: PrepareDocument;
  /** Made once the server exists, for the reloader wants to know it. */
  readonly pages?: (server: Server) => Promise<Pages>;
  readonly clock?: Clock;
  /** Stands between the hub and its database; tests hold the disk still with it. */
  readonly wrapStore?: (store: Store) => Store;
  readonly roomLingerMs?: number;
}

export interface RunningHub {
  readonly url: string;
  readonly port: number;
  readonly hub: Hub;
  /** Commits everything, sends everyone away, closes. Resolves to the number of updates left uncommitted. */
  stop(): Promise<number>;
}

const DRAIN_MS = 8000; // of the ten seconds that a process manager usually grants
const GOODBYE_MS = 500; // for closing handshakes; whoever has not answered by then is cut off

/** Builds the hub from its parts and listens. Errors: Error if the folder is in use or the port taken. */
export async function startHub(options: HubOptions): Promise<RunningHub> {
  mkdirSync(options.dataDir, { recursive: true });
  const lock = lockFolder(options.dataDir);
  let store: Store | null = null;
  try {
    store = await openSqliteInWorker(join(options.dataDir, "heelstrip.db"));
    return await build(options, { store: options.wrapStore?.(store) ?? store, lock });
  } catch (error) {
    await store?.close();
    lock.release();
    throw error;
  }
}

interface Opened {
  readonly store: Store;
  readonly lock: { release(): void };
}

async function build(options: HubOptions, { store, lock }: Opened): Promise<RunningHub> {
  const { host = "127.0.0.1", clock = systemClock, development = false, makeSheet } = options;
  const { publicUrl = null, trustProxy = false, roomLingerMs, prepareDocument } = options;
  const address: Address = { publicUrl, trustProxy };
  const instance = randomBytes(6).toString("base64url");
  const linger = roomLingerMs === undefined ? {} : { roomLingerMs };
  const hub = createHub({ store, clock, instance, prepareDocument, ...linger });
  const server = createServer();
  const sockets = new WebSocketServer({
    noServer: true,
    maxPayload: HUB_LIMITS.frameBytes,
    perMessageDeflate: false,
  });
  const pages = (await options.pages?.(server)) ?? null;
  const api = createApi({ store, hub, clock, address, makeSheet });
  const upgrade = createUpgrade({ store, hub, address, sockets, clock });
  server.on("request", (request, response) => {
    void answer({ request, response, api, pages, address, development });
  });
  server.on("upgrade", (request: IncomingMessage, socket: Duplex, head: Buffer) => {
    const theirs =
      development && !pathOf(request).startsWith("/sync/") ? pages?.upgrade : undefined;
    void (theirs ?? upgrade)(request, socket, head);
  });
  await listen(server, host, options.port);
  const { port } = server.address() as AddressInfo;
  return {
    ...{ url: `http://${host}:${port}`, port, hub },
    async stop() {
      const closed = new Promise<void>((resolve) => server.close(() => resolve()));
      const left = await hub.drain(DRAIN_MS);
      clock.after(GOODBYE_MS, () => {
        for (const socket of sockets.clients) socket.terminate();
      });
      server.closeIdleConnections();
      await closed;
      await store.close();
      lock.release();
      return left;
    },
  };
}

interface Answering {
  readonly request: IncomingMessage;
  readonly response: ServerResponse;
  readonly api: ReturnType<typeof createApi>;
  readonly pages: Pages | null;
  readonly address: Address;
  readonly development: boolean;
}

async function answer({ request, response, api, pages, address, development }: Answering) {
  const path = pathOf(request);
  if (path === "/api" || path.startsWith("/api/")) {
    guardAnswer(response, isOverTls(request, address));
    return api(request, response, path);
  }
  guardPage(request, response, { address, development });
  if (pages !== null) return pages.handle(request, response);
  sendJson(response, 404, { code: "not-found", message: "this hub serves no pages" });
}

function pathOf({ url = "/" }: IncomingMessage): string {
  return url.split("?")[0] ?? "/";
}
