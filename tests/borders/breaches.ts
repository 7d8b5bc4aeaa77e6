/** A small tree that keeps every rule, as path → source. */
export const SOUND: Readonly<Record<string, string>> = {
  "package.json": JSON.stringify({
    type: "module",
    dependencies: { yjs: "1.0.0", zod: "1.0.0", lib0: "1.0.0", express: "1.0.0" },
  }),
  ...stubPackage("yjs"),
  ...stubPackage("zod"),
  ...stubPackage("lib0"),
  ...stubPackage("express"),
  "lib/coded-error.ts": "export class CodedError extends Error {}",
  "lib/geometry/index.ts": 'export { dot } from "./dot";',
  "lib/geometry/dot.ts": "export const dot = 1;",
  "lib/ink/index.ts": 'export { ink } from "./ink";',
  "lib/ink/ink.ts": 'import { dot } from "../geometry";\nexport const ink = dot;',
  "lib/body/index.ts": "export const body = 1;",
  "lib/motion/index.ts": "export const motion = 1;",
  "lib/gait/index.ts": "export const gait = 1;",
  "lib/sheet/index.ts": 'import { Doc } from "yjs";\nexport const sheet = Doc;',
  "lib/sheet/verbs/slide.ts": 'import { Doc } from "yjs";\nexport const slide = Doc;',
  "lib/export/index.ts": 'import { ink } from "../ink";\nexport const page = ink;',
  "shared/protocol.ts": 'import { doc } from "zod";\nimport "lib0";\nexport const bytes = doc;',
  "app/_room/index.ts": 'import { Doc } from "yjs";\nexport const room = Doc;',
  "app/_workspace/index.ts":
    'import type { Slice } from "./slice";\nexport interface Store { slice: Slice }\nexport const store = 1;',
  "app/_workspace/slice.ts":
    'import type { Store } from "./index";\nexport interface Slice { store: Store }\nexport const slice = 1;',
  "app/_controls/button.tsx": "export const Button = 1;",
  "app/_ink/pen.ts":
    'import { CodedError } from "../../lib/coded-error";\nimport { dot } from "../../lib/geometry";\nimport { room } from "../_room";\nexport const pen = [CodedError, dot, room];',
  "app/_play/play.ts": "export const play = 1;",
  "app/_strip/strip.ts":
    'import { pen } from "../_ink/pen";\nimport { play } from "../_play/play";\nexport const strip = [pen, play];',
  "app/_door/door.ts":
    'import { store } from "../_workspace";\nexport const door = [store, () => import("../_strip/strip")];',
  "server/main.ts":
    'import "node:http";\nimport { Doc } from "yjs";\nimport { bytes } from "../shared/protocol";\nimport { fresh } from "./new-sheet";\nexport const main = [Doc, bytes, fresh];',
  "server/new-sheet.ts": 'import { sheet } from "../lib/sheet";\nexport const fresh = sheet;',
  "bin/cli.ts":
    'import "node:fs";\nimport { gait } from "../lib/gait";\nimport { bytes } from "../shared/protocol";\nexport const cli = [gait, bytes];',
  "tests/cli.test.ts": 'import { cli } from "../bin/cli";\nexport const tested = cli;',
  "scripts/up.mjs": 'import "node:fs";\nexport const late = () => import("zod");',
};

/** For every rule, files laid over the sound tree, each of which breaks that rule and no other. */
export const BREACHES: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  "lib-is-pure": {
    "lib/gait/index.ts":
      'import { bytes } from "../../shared/protocol";\nexport const gait = bytes;',
  },
  "lib-has-no-machine": {
    "lib/export/index.ts":
      'import { readFileSync } from "node:fs";\nexport const page = readFileSync;',
  },
  "lib-by-its-door": {
    "lib/ink/ink.ts": 'import { dot } from "../geometry/dot";\nexport const ink = dot;',
  },
  "left-of-geometry": {
    "lib/geometry/dot.ts": 'import { body } from "../body";\nexport const dot = body;',
  },
  "left-of-ink": {
    "lib/ink/ink.ts":
      'import type { body } from "../body";\nexport type Ink = typeof body;\nexport const ink = 1;',
  },
  "left-of-body": {
    "lib/body/index.ts": 'import { motion } from "../motion";\nexport const body = motion;',
  },
  "left-of-motion": {
    "lib/motion/index.ts": 'export { gait as motion } from "../gait";',
  },
  "left-of-gait": {
    "lib/gait/index.ts": 'import { sheet } from "../sheet";\nexport const gait = sheet;',
  },
  "left-of-sheet": {
    "lib/sheet/index.ts": 'import { page } from "../export";\nexport const sheet = page;',
  },
  "guards-know-nobody": {
    "lib/coded-error.ts":
      'import { body } from "./body";\nexport class CodedError extends Error { body = body; }',
  },
  "app-enters-lib-by-its-doors": {
    "app/_play/play.ts":
      'import { slide } from "../../lib/sheet/verbs/slide";\nexport const play = slide;',
  },
  "bin-enters-lib-by-its-doors": {
    "bin/cli.ts": 'import { dot } from "../lib/geometry/dot";\nexport const cli = dot;',
  },
  "app-and-server-meet-in-shared": {
    "app/_play/play.ts":
      'import type { main } from "../../server/main";\nexport type Play = typeof main;\nexport const play = 1;',
  },
  "hub-is-deaf": {
    "server/main.ts": 'import { gait } from "../lib/gait";\nexport const main = gait;',
  },
  "new-sheet-knows-sheets-alone": {
    "server/new-sheet.ts": 'import { gait } from "../lib/gait";\nexport const fresh = gait;',
  },
  "shared-is-a-leaf": {
    "shared/protocol.ts": 'import { gait } from "../lib/gait";\nexport const bytes = gait;',
  },
  "shared-uses-little": {
    "shared/protocol.ts": 'import { doc } from "express";\nexport const bytes = doc;',
  },
  "bin-is-lib-and-files": {
    "bin/cli.ts": 'import { main } from "../server/main";\nexport const cli = main;',
  },
  "nobody-imports-tests": {
    "server/main.ts": 'import { helper } from "../tests/helper";\nexport const main = helper;',
    "tests/helper.ts": "export const helper = 1;",
  },
  "yjs-has-two-homes": {
    "app/_ink/pen.ts": 'import { Doc } from "yjs";\nexport const pen = Doc;',
  },
  "features-are-strangers": {
    "app/_play/play.ts": 'import { pen } from "../_ink/pen";\nexport const play = pen;',
  },
  "door-opens-the-strip": {
    "app/_door/door.ts": 'import { pen } from "../_ink/pen";\nexport const door = pen;',
  },
  "controls-know-no-sheet": {
    "app/_controls/button.tsx":
      'import { sheet } from "../../lib/sheet";\nexport const Button = sheet;',
  },
  "commons-serve-features": {
    "app/_workspace/index.ts":
      'import { play } from "../_play/play";\nexport interface Store { play: typeof play }\nexport const store = 1;',
  },
  "no-cycles": {
    "lib/geometry/dot.ts": 'import { line } from "./line";\nexport const dot = () => line;',
    "lib/geometry/line.ts": 'import { dot } from "./dot";\nexport const line = () => dot;',
  },
  "everything-resolves": {
    "app/_play/play.ts": 'import { gone } from "./gone";\nexport const play = gone;',
  },
  "scripts-start-bare": {
    "scripts/up.mjs": 'import { doc } from "zod";\nexport const late = doc;',
  },
};

function stubPackage(name: string): Record<string, string> {
  return {
    [`node_modules/${name}/package.json`]: JSON.stringify({
      name,
      version: "1.0.0",
      main: "index.js",
    }),
    [`node_modules/${name}/index.js`]: "export class Doc {}\nexport const doc = 1;",
  };
}
