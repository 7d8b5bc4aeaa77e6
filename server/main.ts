import { systemClock } from "./clock";
import { readEnv } from "./env";
import { createLog, type Log, saidBy } from "./log";
import { newSheet, prepareDocument } from "./new-sheet";
import { type RunningHub, startHub } from "./start-hub";

const LAST_RESORT_MS = 10_000; // then whoever started us would kill us anyway

/** Reads the environment, builds the parts, listens; at a signal, commits everything and goes. */
async function main(): Promise<void> {
  const env = readEnv(process.env);
  const { pages, ...options } = env;
  const log = createLog({ write: (line) => process.stderr.write(line), clock: systemClock });
  const running = await startHub({
    ...options,
    log,
    makeSheet: newSheet,
    prepareDocument,
    ...(pages ? { pages: (server) => openPages(server, env) } : {}),
  });
  leaveAtSignal(running, log);
  log.info("up", { port: running.port, healthPort: running.healthPort });
  console.log(`Heelstrip is at ${env.publicUrl?.href ?? running.url}`);
}

/** A hub alone never loads the page renderer. */
async function openPages(server: import("node:http").Server, env: ReturnType<typeof readEnv>) {
  const pages = await import("./pages");
  return pages.openPages(server, env);
}

/** Exit 0: everything is stored. 1: something is not, and the log says how much. */
function leaveAtSignal(running: RunningHub, log: Log): void {
  let going = false;
  const go = async (why: string, code = 0) => {
    if (going) return;
    going = true;
    log.info("going", { why });
    setTimeout(() => leave(running.hub.figures().waiting, 1), LAST_RESORT_MS).unref();
    leave(await running.stop(), code);
  };
  const leave = (unsaved: number, code: number) => {
    if (unsaved > 0) log.error("unsaved", { updates: unsaved });
    process.exit(unsaved > 0 ? 1 : code);
  };
  process.on("SIGTERM", () => void go("SIGTERM"));
  process.on("SIGINT", () => void go("SIGINT"));
  // Nothing that is still in line is lost by a fault elsewhere.
  const crash = (error: unknown) => {
    log.error("crash", { error: saidBy(error), stack: (error as Error)?.stack ?? null });
    void go("crash", 1);
  };
  process.on("uncaughtException", crash);
  process.on("unhandledRejection", crash);
}

main().catch((error: unknown) => {
  console.error(saidBy(error));
  process.exit(1);
});
