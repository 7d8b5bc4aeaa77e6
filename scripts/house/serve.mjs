import { spawn } from "node:child_process";
import { createServer } from "node:net";
import { ROOT } from "./root.mjs";

/**
 * Where the board will answer: the same two variables, and the same defaults, as server/env.ts.
 *
 * @param {{ HOST?: string, PORT?: string }} env
 */
export function addressAsked({ HOST, PORT } = process.env) {
  const port = Number(PORT || 3000);
  if (Number.isInteger(port) && port >= 0 && port <= 65_535)
    return { host: HOST || "127.0.0.1", port };
  throw new Error(`PORT needs a port in 0..65535, got ${PORT}`);
}

/** Errors: one plain sentence when something else already answers there. */
export async function requireFreePort({ host, port }) {
  const taken = await new Promise((resolve) => {
    const probe = createServer();
    probe.once("error", (error) => resolve(error.code ?? "in use"));
    probe.listen(port, host, () => probe.close(() => resolve(null)));
  });
  if (taken === null) return;
  if (taken !== "EADDRINUSE") throw new Error(`cannot listen on ${host} port ${port}: ${taken}`);
  throw new Error(
    `port ${port} on ${host} is taken: stop what runs there, or choose another with PORT=${port + 1}`,
  );
}

/** Runs the server in the foreground; signals are passed on, and its exit code becomes ours. */
export function serve(args, env) {
  const child = spawn(process.execPath, args, {
    cwd: ROOT,
    env: { ...process.env, NEXT_TELEMETRY_DISABLED: "1", ...env },
    stdio: "inherit",
  });
  // A terminal sends Ctrl-C to both of us; a supervisor sends it to this process alone.
  process.on("SIGINT", () => process.stdin.isTTY || child.kill("SIGINT"));
  for (const signal of ["SIGTERM", "SIGHUP"]) process.on(signal, () => child.kill(signal));
  child.on("error", (error) => {
    console.error(`the server did not start: ${error.message}`);
    process.exit(1);
  });
  child.on("exit", (code, signal) => process.exit(code ?? (signal === null ? 1 : 0)));
}
