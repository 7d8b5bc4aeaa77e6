/**
 * Who may import whom. `tests/borders` runs this list over the tree and plants a breach of every
 * rule. Between folders types count like values: what a module knows by its types, it still knows.
 */

const LIB = ["geometry", "ink", "body", "motion", "gait", "sheet", "export"]; // each may import those to its left

const forbid = (name, from, to, comment) => ({ name, severity: "error", comment, from, to });

/** Packages as dependency-cruiser tells them from our own modules and from Node's. */
const PACKAGES = ["npm", "npm-dev", "npm-optional", "npm-peer", "npm-bundled", "npm-no-pkg"];
const COMMONS = "room|workspace|paper|controls|words"; // what every feature may use, and uses none
const DOORS = "^lib/([^/]+/index|require|coded-error)[.]ts$";

module.exports = {
  forbidden: [
    forbid(
      "lib-is-pure",
      { path: "^lib/" },
      { path: "^(app|server|shared|bin|tests|scripts)/" },
      "no screen, no network, no contract",
    ),
    forbid(
      "lib-has-no-machine",
      { path: "^lib/" },
      { dependencyTypes: ["core"] },
      "no files, no sockets, no process: values in, values out",
    ),
    forbid(
      "lib-by-its-door",
      { path: "^lib/([^/]+)/" },
      { path: "^lib/[^/]+/.", pathNot: ["^lib/$1/", "^lib/[^/]+/index[.]ts$"] },
      "import its index.ts",
    ),
    ...LIB.map((folder, i) =>
      forbid(
        `left-of-${folder}`,
        { path: `^lib/${folder}/` },
        { path: `^lib/(${LIB.slice(i + 1).join("|") || "-"})/` },
        "see LIB",
      ),
    ).slice(0, -1), // nothing stands to the right of the last
    forbid(
      "guards-know-nobody",
      { path: "^lib/[^/]+[.]ts$" },
      { path: "^lib/[^/]+/" },
      "what every folder uses cannot use a folder",
    ),
    forbid(
      "app-enters-lib-by-its-doors",
      { path: "^app/" },
      { path: "^lib/", pathNot: DOORS },
      "import the folder's index.ts",
    ),
    forbid(
      "bin-enters-lib-by-its-doors",
      { path: "^bin/" },
      { path: "^lib/", pathNot: DOORS },
      "import the folder's index.ts",
    ),
    forbid(
      "app-and-server-meet-in-shared",
      { path: "^app/" },
      { path: "^(server|bin)/" },
      "what both need to know stands in shared",
    ),
    forbid(
      "hub-is-deaf",
      { path: "^server/", pathNot: "^server/new-sheet[.]ts$" },
      { path: "^(app|lib|bin)/" },
      "the hub relays sheets, it never reads them",
    ),
    forbid(
      "new-sheet-knows-sheets-alone",
      { path: "^server/new-sheet[.]ts$" },
      { path: "^(app|lib|bin)/", pathNot: "^lib/(sheet/index|coded-error)[.]ts$" },
      "it makes a sheet's first content, and that is all it knows of one",
    ),
    forbid(
      "shared-is-a-leaf",
      { path: "^shared/" },
      { path: "^(app|lib|server|bin|tests|scripts)/" },
      "the contract depends on neither side",
    ),
    forbid(
      "shared-uses-little",
      { path: "^shared/" },
      { dependencyTypes: [...PACKAGES, "core"], pathNot: "node_modules/(zod|lib0)/" },
      "zod to parse, lib0 for bytes; it is loaded by page and server alike",
    ),
    forbid(
      "bin-is-lib-and-files",
      { path: "^bin/" },
      { path: "^(app|server|tests|scripts)/" },
      "the command line works without a board",
    ),
    forbid(
      "nobody-imports-tests",
      { pathNot: "^(tests/|playwright[.]config|vitest[.]config)" },
      { path: "^tests/" },
      "what ships does not know how it is tested",
    ),
    forbid(
      "yjs-has-two-homes",
      { path: "^(app|lib|bin)/", pathNot: "^(lib/sheet|app/_room)/" },
      { path: "node_modules/yjs/" },
      "features hand doc to verbs",
    ),
    forbid(
      "features-are-strangers",
      { path: "^app/(_[a-z-]+)/", pathNot: `^app/_(strip|door|${COMMONS})/` },
      { path: "^app/_", pathNot: [`^app/_(${COMMONS})/`, "^app/$1/"] },
      "they meet in _strip",
    ),
    forbid(
      "door-opens-the-strip",
      { path: "^app/_door/" },
      { path: "^app/_", pathNot: `^app/_(door|strip|${COMMONS})/` },
      "it lets people in and shows them one thing, the strip",
    ),
    forbid(
      "controls-know-no-sheet",
      { path: "^app/_controls/" },
      { path: "^(app/_|lib/|shared/)", pathNot: "^app/_(controls|words)/" },
      "buttons and sliders that have never heard of a sheet",
    ),
    forbid(
      "commons-serve-features",
      { path: `^app/_(${COMMONS})/` },
      { path: "^app/_", pathNot: `^app/_(${COMMONS})/` },
      "they are used by features and use none",
    ),
    // A cycle through `import type` is a remark between two files, not an order of loading (a store's
    // slice names the store's type, as zustand asks): those are allowed.
    forbid(
      "no-cycles",
      {},
      { circular: true, viaOnly: { dependencyTypesNot: ["type-only"] } },
      "a reader, and the loader, must be able to start somewhere",
    ),
    forbid(
      "everything-resolves",
      { pathNot: "^tests/bench/peers/" }, // a package of its own, whose packages only the bench installs
      { couldNotResolve: true },
      "an import that leads nowhere would hide what it breaks",
    ),
    forbid(
      "scripts-start-bare",
      { path: "^scripts/" },
      { dependencyTypes: PACKAGES, dynamic: false },
      "they run on an empty checkout: a package is imported when it is there, not before",
    ),
  ],
  options: {
    doNotFollow: { path: "node_modules" },
    exclude: { path: "^(tests/bench/peers/node_modules|[.]next|dist)/" },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: "tsconfig.json" },
    enhancedResolveOptions: {
      exportsFields: ["exports"],
      conditionNames: ["import", "node", "default", "types"],
    },
  },
};
