import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { BOARD_FLAGS } from "../../scripts/house/board-flags.mjs";

const ROOT = fileURLToPath(new URL("../..", import.meta.url));

/** A board of one's own: the built server as a process, on a free port, over an empty folder. */
export interface Board {
  readonly url: string;
  readonly dataDir: string;
  /** Ends it as a person would, and deletes its folder. */
  stop(): Promise<void>;
  /**
   * Ends it, or with `"SIGKILL"` strikes it down, and starts it again: same address, same folder.
   * `between` is done while it is down, with its folder.
   */
  restart(signal?: NodeJS.Signals, between?: (dataDir: string) => void): Promise<void>;
}

/**
 * Starts the built board; `npm run build` comes first. Its folder is a new one unless `DATA_DIR` names it.
 *
 * Errors:  Error with what the server said, when it ends before it is ready
 */
export async function startBoard(env: Readonly<Record<string, string>> = {}): Promise<Board> {
  const dataDir = env.DATA_DIR ?? (await mkdtemp(join(tmpdir(), "heelstrip-board-")));
  const start = (port: string) => startServer({ PORT: port, ...env, DATA_DIR: dataDir });
  let server = await start("0");
  const { url } = server;
  return {
    url,
    dataDir,
    async stop() {
      await end(server.child, "SIGTERM");
      await rm(dataDir, { recursive: true, force: true });
    },
    async restart(signal = "SIGTERM", between = () => {}) {
      await end(server.child, signal);
      between(dataDir);
      server = await start(new URL(url).port);
    },
  };
}

interface Server {
  readonly child: ChildProcess;
  readonly url: string;
}

/** Resolves once the server has printed its address: by then it answers. */
function startServer(env: Readonly<Record<string, string>>): Promise<Server> {
  const child = spawn(process.execPath, [...BOARD_FLAGS, "dist/server.mjs"], {
    cwd: ROOT,
    env: { ...process.env, NODE_ENV: "production", HOST: "127.0.0.1", ...env },
    stdio: ["ignore", "pipe", "pipe"],
  });
  return new Promise((resolve, reject) => {
    let said = "";
    const hear = (chunk: Buffer) => {
      said += chunk;
      const url = /http:\/\/127\.0\.0\.1:\d+/.exec(said)?.[0];
      if (url !== undefined) resolve({ child, url });
    };
    child.stdout.on("data", hear);
    child.stderr.on("data", hear);
    child.once("error", reject);
    child.once("exit", (code) => {
      reject(new Error(`the board ended with ${code} before it was ready:\n${said}`));
    });
  });
}

async function end(child: ChildProcess, signal: NodeJS.Signals): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return;
  const ended = once(child, "exit");
  child.kill(signal);
  await ended;
}
