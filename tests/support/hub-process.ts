import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { createInterface } from "node:readline";
import { fileURLToPath } from "node:url";
import { BOARD_FLAGS } from "../../scripts/house/board-flags.mjs";
import { toRun } from "./programs";

const PROJECT = fileURLToPath(new URL("../..", import.meta.url));

/** The server in a process of its own, as it is started for people, without its pages. */
export interface HubProcess {
  readonly url: string;
  readonly pid: number;
  /** Ends it and says how it ended: an exit code or the signal's name. */
  end(signal: "SIGKILL" | "SIGTERM"): Promise<number | string | null>;
  /** What it has written to its error output so far. */
  errors(): string;
}

/** Errors: Error with what it complained of, if it does not come up. */
export function startHubProcess(
  dataDir: string,
  env: Readonly<Record<string, string>> = {},
): Promise<HubProcess> {
  const args = [...BOARD_FLAGS, ...toRun("server/main.ts")];
  return startNode(args, { DATA_DIR: dataDir, HEELSTRIP_PAGES: "off", ...env });
}

/** Any server of ours that says its address on its first lines. */
export function startProcess(
  file: string,
  env: Readonly<Record<string, string>> = {},
): Promise<HubProcess> {
  return startNode(toRun(file), env);
}

/** The same, of what Node runs by itself. */
export async function startNode(
  args: readonly string[],
  env: Readonly<Record<string, string>> = {},
): Promise<HubProcess> {
  const child = spawn(process.execPath, args, {
    cwd: PROJECT,
    env: { ...process.env, PORT: "0", HOST: "127.0.0.1", ...env },
    stdio: ["ignore", "pipe", "pipe"],
  });
  const orphaned = () => child.kill("SIGKILL");
  process.once("exit", orphaned); // a test that failed leaves nothing running
  child.once("exit", () => process.off("exit", orphaned));
  const ended = once(child, "exit") as Promise<[number | null, string | null]>;
  const complaints: string[] = [];
  child.stderr?.on("data", (data: Buffer) => complaints.push(data.toString()));
  const errors = () => complaints.join("");
  return {
    errors,
    pid: child.pid ?? 0,
    url: await addressOf(child, ended, errors),
    async end(signal) {
      child.kill(signal);
      const [code, by] = await ended;
      return code ?? by;
    },
  };
}

async function addressOf(
  child: ChildProcess,
  ended: Promise<unknown>,
  errors: () => string,
): Promise<string> {
  if (child.stdout === null) throw new Error("the process has an output");
  const lines = createInterface({ input: child.stdout });
  const said = new Promise<string>((resolve) => {
    lines.on("line", (line) => {
      const url = /http:\/\/\S+/.exec(line)?.[0];
      if (url !== undefined) resolve(url);
    });
  });
  const url = await Promise.race([said, ended.then(() => null)]);
  if (url === null) throw new Error(errors() || "the process ended at once");
  return url;
}
