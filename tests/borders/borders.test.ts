import { existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { BREACHES, SOUND } from "./breaches";
import { cruiseTree, FOLDERS, ROOT, RULES } from "./cruise-tree";

/** The least number of modules each folder holds: a checker that reads nothing finds nothing. */
const AT_LEAST = {
  ...{ "lib/geometry/": 5, "lib/ink/": 10, "lib/body/": 8, "lib/motion/": 4 },
  ...{ "lib/gait/": 25, "lib/sheet/": 30, "lib/export/": 25 },
  ...{ "app/": 150, "server/": 40, "shared/": 10, "bin/": 8, "tests/": 60, "scripts/": 20 },
};

describe("the tree", () => {
  it("keeps every border, and was read in whole", async () => {
    const { modules, breaches } = await cruiseTree(
      ROOT,
      FOLDERS.filter((folder) => existsSync(join(ROOT, folder))),
    );
    expect(breaches).toEqual([]);
    for (const [folder, least] of Object.entries(AT_LEAST)) {
      const seen = modules.filter((path) => path.startsWith(folder));
      expect(seen.length, `modules seen in ${folder}`).toBeGreaterThanOrEqual(least);
    }
  });
});

describe("the list", () => {
  const planted: string[] = [];
  afterAll(() => {
    for (const folder of planted) rmSync(folder, { recursive: true, force: true });
  });

  /** Writes a small tree with its own stub packages, so that nothing of ours is seen by mistake. */
  function plant(files: Readonly<Record<string, string>>): string {
    const folder = mkdtempSync(join(tmpdir(), "borders-"));
    planted.push(folder);
    for (const [path, source] of Object.entries(files)) {
      mkdirSync(dirname(join(folder, path)), { recursive: true });
      writeFileSync(join(folder, path), source);
    }
    return folder;
  }

  it("has a planted breach for every rule, and none for a rule that is gone", () => {
    expect(Object.keys(BREACHES).sort()).toEqual([...RULES].sort());
  });

  it("lets a sound tree pass", async () => {
    const { modules, breaches } = await cruiseTree(plant(SOUND), FOLDERS);
    expect(breaches).toEqual([]);
    expect(modules.length).toBe(
      Object.keys(SOUND).filter((path) => /^(?!node_modules).*\/.*\.(tsx?|mjs)$/.test(path)).length,
    );
  });

  it.each(Object.entries(BREACHES))(
    "sees a breach of %s, and of nothing else",
    async (rule, files) => {
      const { breaches } = await cruiseTree(plant({ ...SOUND, ...files }), FOLDERS);
      expect([...new Set(breaches.map((breach) => breach.rule))]).toEqual([rule]);
    },
  );
});
