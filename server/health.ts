import { createServer, type Server, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import type { Clock } from "./clock";
import type { Hub } from "./hub";
import { listen } from "./listen";
import type { LoopWatch } from "./loop-watch";
import type { Metrics } from "./metrics";

const HOST = "127.0.0.1"; // for the machine's own watchers only
const LIVE_MS = 2000; // a process that lags behind its own timers by more does nobody any good
const READY_MS = 2000; // how old the last proof that something can be stored may be

export interface HealthDeps {
  readonly hub: Hub;
  readonly clock: Clock;
  readonly loop: LoopWatch;
  readonly metrics: Metrics;
  /** Writes something to the database. */
  readonly probe: (at: number) => Promise<void>;
}

export interface HealthPort {
  /** 0 takes one that is free. */
  readonly port: number;
  /** Whether another one will not do. */
  readonly insist: boolean;
}

export interface Health {
  readonly port: number;
  close(): void;
}

/**
 * /livez: the process does its work in time. /readyz: it takes people in, and what they draw can be
 * stored. /metrics: what it counts. On a port of their own, so that a proxy cannot show them to the world.
 *
 * Errors: Error if the port is taken and no other will do
 */
export async function startHealth(deps: HealthDeps, wanted: HealthPort): Promise<Health> {
  const { loop, metrics, hub } = deps;
  const isReady = readiness(deps);
  const server = createServer(async (request, response) => {
    switch (request.url) {
      case "/livez": {
        const lagMs = Math.round(loop.lagMs());
        return say(response, lagMs < LIVE_MS ? 200 : 503, { lagMs });
      }
      case "/readyz": {
        const why = await isReady();
        const { storage, waiting, connections } = hub.figures();
        const figures = { storage, waiting, connections: connections.length };
        return say(response, why === null ? 200 : 503, { ready: why === null, why, ...figures });
      }
      case "/metrics":
        response.writeHead(200, { "content-type": metrics.contentType });
        return response.end(await metrics.read());
      default:
        return say(response, 404, { doors: ["/livez", "/readyz", "/metrics"] });
    }
  });
  await open(server, wanted);
  return {
    port: (server.address() as AddressInfo).port,
    close() {
      server.closeAllConnections();
      server.close();
    },
  };
}

async function open(server: Server, { port, insist }: HealthPort): Promise<void> {
  try {
    await listen(server, HOST, port, "HEALTH_PORT");
  } catch (error) {
    if (insist) throw error;
    await listen(server, HOST, 0, "HEALTH_PORT");
  }
}

/** What keeps people from being taken in, in a word; null for nothing. */
function readiness({ hub, clock, probe }: HealthDeps): () => Promise<string | null> {
  let provenAt = 0;
  let probing: Promise<void> | null = null;
  const isProven = () => {
    const { committedAt } = hub.figures();
    return clock.now() - Math.max(provenAt, committedAt ?? 0) < READY_MS;
  };
  const prove = async () => {
    try {
      await probe(clock.now());
      provenAt = clock.now();
    } catch {
      // What could not be written proves nothing, and that is the answer.
    }
  };
  return async () => {
    if (hub.isDraining()) return "going";
    if (hub.figures().storage !== "ok") return "storage";
    if (isProven()) return null;
    probing ??= prove().finally(() => {
      probing = null;
    });
    await Promise.race([probing, new Promise<void>((resolve) => clock.after(READY_MS, resolve))]);
    return isProven() ? null : "storage";
  };
}

function say(response: ServerResponse, status: number, body: unknown): void {
  response.writeHead(status, { "content-type": "application/json", "cache-control": "no-store" });
  response.end(`${JSON.stringify(body)}\n`);
}
