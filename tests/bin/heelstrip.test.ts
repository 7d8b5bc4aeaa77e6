import { execFile } from "node:child_process";
import { readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { describe, expect, it } from "vitest";
import { heelstrip } from "../support/command-line";
import { ownFiles } from "../support/own-files";

const files = ownFiles();

describe("heelstrip", () => {
  it("explains itself when asked", async () => {
    for (const args of [["--help"], ["-h"], ["check", "--help"]]) {
      const { code, out, err } = await heelstrip(...args);
      expect({ code, err }).toEqual({ code: 0, err: [] });
      expect(out).toContain("heelstrip check FILE... [--yardstick trade|life|this-walk|version]");
    }
  });

  it("writes the demo, whose planted faults make check exit 1", async () => {
    const file = join(files.folder, "brindle.json");
    expect((await heelstrip("example", "--name", "brindle", "-o", file)).code).toBe(0);
    const { code, out } = await heelstrip("check", file);
    expect(code).toBe(1);
    expect(out).toContain("brindle.json: Brindle carries the parcels");
    expect(out.match(/(will|may) show · [a-z-]+ · [a-z]+/g)).toEqual([
      "will show · hip-order · right",
      "will show · slide · left",
      "may show · gaps · right",
    ]);
  });

  it("writes the example, which checks, from a shell", async () => {
    const start = fileURLToPath(new URL("../../bin/heelstrip.mjs", import.meta.url));
    const file = join(files.folder, "example.json");
    const env = { ...process.env, HEELSTRIP_FROM_SOURCE: "1" };
    const run = promisify(execFile);
    await run(process.execPath, [start, "example", "-o", file], { env });
    const { stdout } = await run(process.execPath, [start, "check", file], { env });
    expect(stdout).toContain("example.json: A plain walk, captured");
    await writeFile(file, (await readFile(file, "utf8")).slice(0, 500));
    await expect(run(process.execPath, [start, "check", file], { env })).rejects.toMatchObject({
      code: 2,
      stdout: "",
      stderr: expect.stringMatching(/^heelstrip: .*example\.json: expected JSON.*\n$/),
    });
  }, 120_000); // three starts from the source, which a busy machine takes its time over
});
