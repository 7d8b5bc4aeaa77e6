import { readdirSync, readFileSync } from "node:fs";
import { runTool } from "../../scripts/house/run.mjs";

const FOLDER = "tests/lib";

/** Every file of the library's tests that states a property, with a seed of its own each round. */
export async function soakProperties(rounds: number): Promise<readonly string[]> {
  const first = Number(process.env.SEED ?? Date.now() % 1e6);
  const files = statingProperties();
  const faults: string[] = [];
  for (let round = 0; round < rounds; round++) {
    const SEED = String(first + round);
    const { code, output, seconds } = await runTool(
      "vitest/vitest.mjs",
      ["run", "--project", "lib", ...files],
      { env: { SEED } },
    );
    console.log(`properties: ${files.length} files, seed ${SEED}, ${seconds.toFixed(0)} s`);
    if (code === 0) continue;
    console.log(output);
    faults.push(`properties: SEED=${SEED}`);
  }
  return faults;
}

function statingProperties(): string[] {
  return readdirSync(FOLDER, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".test.ts"))
    .map((file) => `${FOLDER}/${file}`)
    .filter((file) => readFileSync(file, "utf8").includes("fc.property("));
}
