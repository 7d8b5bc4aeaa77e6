#!/usr/bin/env node
/** Starts the command line: the bundled build where there is one, else the sources through tsx. */
import { existsSync } from "node:fs";

const built = new URL("../dist/cli.mjs", import.meta.url);
const fromSource = process.env.HEELSTRIP_FROM_SOURCE === "1" || !existsSync(built);
if (fromSource) {
  const { register } = await import("tsx/esm/api");
  register();
}
const { main } = await import(fromSource ? "./cli.ts" : built.href);
process.exitCode = await main(process.argv.slice(2));
