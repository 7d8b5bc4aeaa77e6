import { spawn } from "node:child_process";
import { once } from "node:events";
import { fileURLToPath } from "node:url";
import { toRun } from "./programs";

const PROJECT = fileURLToPath(new URL("../..", import.meta.url));

export interface Ran {
  readonly code: number | null;
  readonly said: string;
  readonly complained: string;
}

/** One of our commands, in a process of its own, to its end. */
export async function runCommand(
  file: string,
  args: readonly string[],
  env: Readonly<Record<string, string>>,
): Promise<Ran> {
  const child = spawn(process.execPath, [...toRun(file), ...args], {
    cwd: PROJECT,
    env: { ...process.env, ...env },
    stdio: ["ignore", "pipe", "pipe"],
  });
  let [said, complained] = ["", ""];
  child.stdout.on("data", (data: Buffer) => {
    said += data;
  });
  child.stderr.on("data", (data: Buffer) => {
    complained += data;
  });
  const [code] = (await once(child, "close")) as [number | null];
  return { code, said, complained };
}
