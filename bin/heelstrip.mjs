#!/usr/bin/env node
/**
 * Starts the command line: the bundled build where there is one, else the sources through tsx. What
 * nobody expected is one line and exit 70, for 1 would say that something shows in the walk.
 * Source: 70 is EX_SOFTWARE of sysexits.h
 */
import { existsSync } from "node:fs";

process.on("uncaughtException", (error) => {
  const [first] = String(error).split("\n");
  process.stderr.write(`heelstrip: a fault of its own: ${first}\n`, () => process.exit(70));
});

const built = new URL("../dist/cli.mjs", import.meta.url);
const fromSource = process.env.HEELSTRIP_FROM_SOURCE === "1" || !existsSync(built);
if (fromSource) {
  const { register } = await import("tsx/esm/api");
  register();
}
const { main } = await import(fromSource ? "./cli.ts" : built.href);
process.exitCode = await main(process.argv.slice(2));
