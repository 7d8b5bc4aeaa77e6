import { spawn } from "node:child_process";
import { ROOT } from "./root.mjs";

/**
 * Runs a command to its end in the checkout and keeps what it says.
 *
 * Units:   timeout in milliseconds
 * Errors:  none; a command that cannot start or runs too long answers with a code other than 0
 */
export function run(command, args, { env = {}, timeout = 15 * 60_000, show = false } = {}) {
  const started = performance.now();
  return new Promise((resolve) => {
    const child = spawn(command, args, {
      cwd: ROOT,
      env: { ...plain(process.env), ...env },
      stdio: ["ignore", "pipe", "pipe"],
      detached: true, // its own group, so that ending it ends what it started
    });
    const said = [];
    for (const stream of [child.stdout, child.stderr]) {
      stream.on("data", (chunk) => {
        said.push(chunk);
        if (show) process.stdout.write(chunk);
      });
    }
    const end = (signal) => endGroup(child.pid, signal);
    const pass = () => end("SIGTERM");
    const timer = setTimeout(() => {
      said.push(`\n${command} did not end within ${timeout / 60_000} minutes\n`);
      end("SIGKILL");
    }, timeout);
    process.once("SIGINT", pass).once("SIGTERM", pass);
    const finish = (code) => {
      clearTimeout(timer);
      process.off("SIGINT", pass).off("SIGTERM", pass);
      const output = said.map(String).join("");
      resolve({ code, output, seconds: (performance.now() - started) / 1000 });
    };
    child.on("error", (error) => {
      said.push(`${command} did not start: ${error.message}\n`);
      finish(127);
    });
    child.on("close", (code) => finish(code ?? 1));
  });
}

/** What is said is read by people and by machines, later: no colours. */
const plain = ({ FORCE_COLOR: _, ...env }) => ({ ...env, NO_COLOR: "1" });

/** Runs a tool that comes with the installed packages, by its file, without npx looking around. */
export const runTool = (file, args, options) =>
  run(process.execPath, [`node_modules/${file}`, ...args], options);

function endGroup(pid, signal) {
  try {
    process.kill(-pid, signal);
  } catch {
    // already gone
  }
}
