import type { BlockList } from "node:net";
import { resolve } from "node:path";
import { ADDRESS_LIMITS, LIMITS, type PageAllowance } from "../shared/limits";
import type { AddressAllowance } from "./access/address-limits";
import { readProxies } from "./access/client-address";
import type { HealthPort } from "./health";

const HEALTH_PORT = 9300; // ours unless another board on the machine has it; then a free one

/** What the environment says, read once when the process starts. `docs/self-host.md` lists it for those who host. */
export interface Env {
  readonly port: number;
  readonly host: string;
  /** The folder of the database and its lock. */
  readonly dataDir: string;
  /** The address people use, if a proxy stands in front; null: the one they came by. */
  readonly publicUrl: URL | null;
  /** Believe X-Forwarded-* of the proxy in front. */
  readonly trustProxy: boolean;
  /** Proxies that stand between ours and people, where there are any. */
  readonly trustedProxies: BlockList;
  /** What one address may have and do. */
  readonly allowance: AddressAllowance;
  /** What one page may send a second. */
  readonly pageAllowance: PageAllowance;
  /** Loopback port of /livez, /readyz and /metrics; null: none. */
  readonly health: HealthPort | null;
  /** Serve the pages too; off for a hub alone. */
  readonly pages: boolean;
  readonly development: boolean;
}

/** Errors: Error naming the variable, what it needs and what it holds. */
export function readEnv(from: Readonly<Record<string, string | undefined>>): Env {
  return {
    port: portIn(from, "PORT") ?? 3000,
    host: from.HOST || "127.0.0.1",
    dataDir: resolve(from.DATA_DIR || "data"),
    publicUrl: addressIn(from, "PUBLIC_URL"),
    trustProxy: switchIn(from, "TRUST_PROXY", false),
    trustedProxies: proxiesIn(from, "TRUSTED_PROXIES"),
    allowance: {
      sockets: countIn(from, "ADDRESS_SOCKETS", ADDRESS_LIMITS.sockets),
      requestsPerMinute: countIn(from, "ADDRESS_REQUESTS", ADDRESS_LIMITS.requestsPerMinute),
      sheetsPerHour: countIn(from, "ADDRESS_SHEETS", ADDRESS_LIMITS.sheetsPerHour),
    },
    pageAllowance: {
      messagesPerSecond: countIn(from, "PAGE_MESSAGES", LIMITS.messagesPerSecond),
      bytesPerSecond: countIn(from, "PAGE_BYTES", LIMITS.bytesPerSecond),
    },
    health: healthIn(from, "HEALTH_PORT"),
    pages: switchIn(from, "HEELSTRIP_PAGES", true),
    development: from.NODE_ENV === "development",
  };
}

type Source = Readonly<Record<string, string | undefined>>;

function portIn(from: Source, name: string): number | null {
  const said = from[name];
  if (said === undefined || said === "") return null;
  const port = Number(said);
  if (Number.isInteger(port) && port >= 0 && port <= 65_535) return port;
  throw new Error(`${name} needs a port in 0..65535, got ${said}`);
}

function healthIn(from: Source, name: string): HealthPort | null {
  if (from[name] === "off") return null;
  const port = portIn(from, name);
  return { port: port ?? HEALTH_PORT, insist: port !== null };
}

function countIn(from: Source, name: string, otherwise: number): number {
  const said = from[name];
  if (said === undefined || said === "") return otherwise;
  const count = Number(said);
  if (Number.isInteger(count) && count > 0) return count;
  throw new Error(`${name} needs a whole number above 0, got ${said}`);
}

function proxiesIn(from: Source, name: string): BlockList {
  try {
    return readProxies(from[name] ?? "");
  } catch (error) {
    throw new Error(`${name} ${error instanceof Error ? error.message : error}`, { cause: error });
  }
}

function switchIn(from: Source, name: string, otherwise: boolean): boolean {
  const said = from[name];
  if (said === undefined || said === "") return otherwise;
  if (["on", "true", "1", "yes"].includes(said)) return true;
  if (["off", "false", "0", "no"].includes(said)) return false;
  throw new Error(`${name} needs on or off, got ${said}`);
}

function addressIn(from: Source, name: string): URL | null {
  const said = from[name];
  if (said === undefined || said === "") return null;
  if (URL.canParse(said)) {
    const url = new URL(said);
    if (url.protocol === "http:" || url.protocol === "https:") return url;
  }
  throw new Error(`${name} needs an address like https://walks.example.org, got ${said}`);
}
