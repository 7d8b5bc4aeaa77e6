import { existsSync, readFileSync } from "node:fs";
import { inRoot } from "./root.mjs";
import { runTool } from "./run.mjs";
import { hashOf, setStamp, stampIs } from "./stamp.mjs";

/** What the build reads. A change in any of it, and nothing else, makes the next build real. */
const READS = [
  ...["app", "lib", "server", "shared", "bin", "public"],
  ...[
    "next.config.mjs",
    "tsconfig.json",
    "package.json",
    "package-lock.json",
    "scripts/house/built.mjs",
  ],
];

/** Bundles beside Next's own output: what is made, and from which module. */
const BUNDLES = {
  server: "server/main.ts",
  "store-worker": "server/store/worker.ts",
  cli: "bin/cli.ts",
};

/** Builds the pages and bundles server and command line, unless that is done. Answers whether it had to. */
export async function ensureBuilt({ force = false } = {}) {
  const reads = hashOf(READS);
  const made = [".next/BUILD_ID", "dist/server.mjs"].every((path) => existsSync(inRoot(path)));
  if (made && !force && stampIs("build", reads)) return false;
  console.log("Building …");
  await bundle(BUNDLES, "dist");
  const { code, output } = await runTool("next/dist/bin/next", ["build"], {
    env: { NEXT_TELEMETRY_DISABLED: "1", NODE_ENV: "production" },
  });
  if (code !== 0) throw new Error(`next build failed\n${output}`);
  setStamp("build", reads);
  return true;
}

/**
 * Packages that go into the bundles: made of many small modules of which we use few, they take ten
 * megabytes of memory in each thread that loads them whole, and four in pieces.
 */
const INSIDE = ["kysely", "zod"];

/**
 * Bundles modules into a folder of the checkout, each under its name. Other packages stay outside: Yjs
 * must be the one copy Next loads too, and some hold native code.
 */
export async function bundle(modules, outdir) {
  const { build } = await import("esbuild");
  const { dependencies } = JSON.parse(readFileSync(inRoot("package.json"), "utf8"));
  const entries = Object.entries(modules).filter(([, from]) => existsSync(inRoot(from)));
  await build({
    absWorkingDir: inRoot(),
    entryPoints: Object.fromEntries(entries),
    outdir,
    outExtension: { ".js": ".mjs" },
    bundle: true,
    platform: "node",
    target: "node20",
    format: "esm",
    external: Object.keys(dependencies).filter((name) => !INSIDE.includes(name)),
    sourcemap: true,
    logLevel: "error",
  });
}
