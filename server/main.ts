import { readEnv } from "./env";
import { startHealth } from "./health";
import { newSheet, prepareDocument } from "./new-sheet";
import { type RunningHub, startHub } from "./start-hub";

const LAST_RESORT_MS = 10_000; // then whoever started us would kill us anyway

/** Reads the environment, builds the parts, listens; at a signal, commits everything and goes. */
async function main(): Promise<void> {
  const env = readEnv(process.env);
  const { port, host, dataDir, publicUrl, trustProxy, development } = env;
  const running = await startHub({
    ...{ port, host, dataDir, publicUrl, trustProxy, development },
    makeSheet: newSheet,
    prepareDocument,
    ...(env.pages ? { pages: (server) => openPages(server, env) } : {}),
  });
  if (env.healthPort !== null) await startHealth(running.hub, env.healthPort);
  goAtSignal(running);
  console.log(`Heelstrip is at ${publicUrl?.href ?? running.url}`);
}

/** A hub alone never loads the page renderer. */
async function openPages(server: import("node:http").Server, env: ReturnType<typeof readEnv>) {
  const pages = await import("./pages");
  return pages.openPages(server, env);
}

function goAtSignal(running: RunningHub): void {
  let going = false;
  const go = async () => {
    if (going) return;
    going = true;
    setTimeout(() => process.exit(1), LAST_RESORT_MS).unref();
    const left = await running.stop();
    if (left > 0)
      console.error(`${left} updates could not be committed; the pages still hold them`);
    process.exit(left > 0 ? 1 : 0);
  };
  process.on("SIGTERM", () => void go());
  process.on("SIGINT", () => void go());
}

main().catch((error: unknown) => {
  console.error(error instanceof Error ? error.message : error);
  process.exit(1);
});
