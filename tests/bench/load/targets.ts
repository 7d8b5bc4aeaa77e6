import { existsSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { agrees } from "../../../scripts/house/packages.mjs";
import { run } from "../../../scripts/house/run.mjs";
import { type HubProcess, startHubProcess, startNode } from "../../support/hub-process";
import { createSheet, enter, temporaryFolder } from "../../support/hub-under-test";
import { setup } from "../../support/programs";

/** What is measured side by side. */
export const TARGETS = ["relay", "memory", "hub"] as const;
export type Target = (typeof TARGETS)[number];

/** A room to come into, as often as one likes. */
export interface Place {
  readonly url: string;
  readonly sheet: string;
  readonly cookie?: string;
}

/** A server under load, in a process of its own. */
export interface Served {
  readonly target: Target;
  readonly pid: number;
  /** The same room for the same name, as another device each time. */
  place(room: string): Promise<Place>;
  /** Ends and starts again, on what it has stored. */
  restart(): Promise<void>;
  stop(): Promise<void>;
}

const PEERS = "tests/bench/peers";
const PACKAGES = fileURLToPath(new URL("../peers/", import.meta.url));
const A_LOT = "1000000000";

/** All load comes from one address and few pages send what hundreds would: the limits of each are out of the way. */
const BOUNDLESS = {
  ...{ ADDRESS_SOCKETS: A_LOT, ADDRESS_REQUESTS: A_LOT, ADDRESS_SHEETS: A_LOT },
  ...{ PAGE_MESSAGES: A_LOT, PAGE_BYTES: A_LOT, HEALTH_PORT: "off" },
};

export async function serve(target: Target): Promise<Served> {
  const folder = temporaryFolder();
  const start = () => startTarget(target, folder.path);
  let process: HubProcess = await start();
  const sheets = new Map<string, ReturnType<typeof createSheet>>();
  return {
    target,
    get pid() {
      return process.pid;
    },
    async place(room) {
      const { url } = process;
      if (target !== "hub") return { url, sheet: room };
      const made = sheets.get(room) ?? createSheet(url);
      sheets.set(room, made);
      const { sheet, links } = await made;
      return { url, sheet, cookie: await enter(url, sheet, links.draw) };
    },
    async restart() {
      await process.end("SIGTERM");
      process = await start();
    },
    async stop() {
      await process.end("SIGTERM");
      folder.remove();
    },
  };
}

async function startTarget(target: Target, dataDir: string): Promise<HubProcess> {
  if (target === "relay") return startNode(["tests/bench/load/bare-relay.mjs"]);
  if (target === "memory") return startNode([`${PEERS}/memory-server.mjs`]);
  return startHubProcess(dataDir, BOUNDLESS);
}

/** Builds the hub, and installs what only the bench compares with, unless it is there. */
export async function ensureTargets(): Promise<void> {
  await setup();
  const note = `${PACKAGES}node_modules/.package-lock.json`;
  const packages = (file: string) => JSON.parse(readFileSync(file, "utf8")).packages;
  const lock = packages(`${PACKAGES}package-lock.json`);
  if (existsSync(note) && agrees(packages(note), lock)) return;
  console.error("installing what the hub is measured beside …");
  const options = ["--prefix", PACKAGES, "--omit=optional", "--ignore-scripts"];
  const { code, output } = await run("npm", ["ci", ...options, "--no-audit", "--no-fund"]);
  if (code !== 0) throw new Error(`npm ci failed in ${PEERS}\n${output}`);
}
