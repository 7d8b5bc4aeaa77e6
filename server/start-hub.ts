import { randomBytes } from "node:crypto";
import { mkdirSync } from "node:fs";
import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import { type AddressInfo, BlockList } from "node:net";
import { join } from "node:path";
import type { Duplex } from "node:stream";
import { WebSocketServer } from "ws";
import { ADDRESS_LIMITS, HUB_LIMITS, type PageAllowance } from "../shared/limits";
import { type AddressAllowance, createAddressLimits } from "./access/address-limits";
import type { ProxyTrust } from "./access/client-address";
import { type Address, isOverTls } from "./access/origin";
import { sendJson } from "./api/answer";
import { createApi } from "./api/api";
import type { MakeSheet } from "./api/doors";
import { type Clock, systemClock } from "./clock";
import { type Health, type HealthPort, startHealth } from "./health";
import { createHub, type Hub } from "./hub";
import { listen } from "./listen";
import { createLog, type Log } from "./log";
import { logNotices, noticesFor } from "./log-notices";
import { watchLoop } from "./loop-watch";
import { createMetrics } from "./metrics";
import type { PrepareDocument } from "./rooms";
import { guardData, guardPage } from "./security-headers";
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
  readonly trustedProxies?: BlockList;
  readonly allowance?: AddressAllowance;
  readonly pageAllowance?: PageAllowance;
  /** The doors for the machine's own watchers; none if it is left out. */
  readonly health?: HealthPort | null;
  readonly development?: boolean;
  readonly makeSheet: MakeSheet;
  readonly prepareDocument: PrepareDocument;
  /** Made once the server exists, for the reloader wants to know it. */
  readonly pages?: (server: Server) => Promise<Pages>;
  readonly clock?: Clock;
  /** Says nothing if it is left out. */
  readonly log?: Log;
  /** Stands between the hub and its database; tests hold the disk still with it. */
  readonly wrapStore?: (store: Store) => Store;
  readonly roomLingerMs?: number;
  readonly graceMs?: number;
}

export interface RunningHub {
  readonly url: string;
  readonly port: number;
  readonly healthPort: number | null;
  readonly hub: Hub;
  /** Commits everything, sends everyone away, closes. Resolves to the number of updates left uncommitted. */
  stop(): Promise<number>;
}

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
  const { host = "127.0.0.1", clock = systemClock } = options;
  const log = options.log ?? createLog({ write: () => {}, clock });
  const { hub, health } = await openHub(options, { store, clock, log });
  const server = createServer();
  const sockets = new WebSocketServer({
    noServer: true,
    maxPayload: HUB_LIMITS.frameBytes,
    perMessageDeflate: false,
  });
  try {
    await serve(options, { server, sockets, store, hub, clock, log });
    await listen(server, host, options.port);
  } catch (error) {
    health?.close();
    throw error;
  }
  const { port } = server.address() as AddressInfo;
  return {
    ...{ url: `http://${host}:${port}`, port, healthPort: health?.port ?? null, hub },
    async stop() {
      const closed = new Promise<void>((resolve) => server.close(() => resolve()));
      const left = await hub.drain(HUB_LIMITS.drainMs);
      clock.after(HUB_LIMITS.goodbyeMs, () => {
        for (const socket of sockets.clients) socket.terminate();
        server.closeAllConnections();
      });
      server.closeIdleConnections();
      await closed;
      // What cannot be written now is not waited for: whoever drew it still holds it.
      if (left === 0) await store.close();
      lock.release();
      health?.close();
      return left;
    },
  };
}

interface Base {
  readonly store: Store;
  readonly clock: Clock;
  readonly log: Log;
}

/** The hub, with everybody who counts and writes down what happens in it. */
async function openHub(options: HubOptions, { store, clock, log }: Base) {
  const { prepareDocument, pageAllowance, roomLingerMs, graceMs } = options;
  const loop = watchLoop(clock);
  const metrics = createMetrics({ figures: () => hub.figures(), clock, loop });
  const hub: Hub = createHub({
    ...{ store, clock, prepareDocument },
    instance: randomBytes(6).toString("base64url"),
    notices: noticesFor(metrics.notices, logNotices(log)),
    ...(pageAllowance === undefined ? {} : { pageAllowance }),
    ...(roomLingerMs === undefined ? {} : { roomLingerMs }),
    ...(graceMs === undefined ? {} : { graceMs }),
  });
  const probe = (at: number) => store.probe(at);
  const doors = { hub, clock, loop, metrics, probe };
  const { health: wanted = null } = options;
  const health: Health | null = wanted === null ? null : await startHealth(doors, wanted);
  const close = () => {
    loop.stop();
    health?.close();
  };
  return { hub, health: health === null ? null : { ...health, close } };
}

interface Serving extends Base {
  readonly server: Server;
  readonly sockets: WebSocketServer;
  readonly hub: Hub;
}

/** Who answers what comes to the one port. */
async function serve(options: HubOptions, { server, sockets, ...base }: Serving): Promise<void> {
  const { publicUrl = null, trustProxy = false, trustedProxies = new BlockList() } = options;
  const { development = false, makeSheet, allowance = ADDRESS_LIMITS } = options;
  const address: Address & ProxyTrust = { publicUrl, trustProxy, trustedProxies };
  const limits = createAddressLimits(allowance, base.clock);
  const pages = (await options.pages?.(server)) ?? null;
  const api = createApi({ ...base, address, limits, makeSheet });
  const upgrade = createUpgrade({ ...base, address, limits, sockets });
  server.on("request", (request, response) => {
    void answer({ request, response, api, pages, address, development });
  });
  server.on("upgrade", (request: IncomingMessage, socket: Duplex, head: Buffer) => {
    const theirs =
      development && !pathOf(request).startsWith("/sync/") ? pages?.upgrade : undefined;
    void (theirs ?? upgrade)(request, socket, head);
  });
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
    guardData(response, isOverTls(request, address));
    return api(request, response, path);
  }
  guardPage(request, response, { address, development });
  if (pages !== null) return pages.handle(request, response);
  sendJson(response, 404, { code: "not-found", message: "this hub serves no pages" });
}

function pathOf({ url = "/" }: IncomingMessage): string {
  return url.split("?")[0] ?? "/";
}
