import { existsSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { asShipped } from "./as-shipped";

/** One line of the table: what was measured, and the figure with its unit. */
interface Measured {
  readonly what: string;
  readonly figure: string | number;
}

/** The benches, each in its own file and exporting one function of that name. */
const BENCHES = {
  review: "benchReview",
  between: "benchBetween",
  ink: "benchInk",
  pen: "benchPen",
  hub: "benchHub",
  weight: "benchWeight",
  print: "benchPrint",
  marking: "benchMarking",
  memory: "benchMemory",
} as const;

/** Benches of the library alone, which is measured as it is shipped. */
const SHIPPED: ReadonlySet<string> = new Set(["review"] satisfies (keyof typeof BENCHES)[]);

const asked = process.argv.slice(2);
const unknown = asked.filter((name) => !(name in BENCHES));
if (unknown.length > 0) {
  console.error(`no bench ${unknown.join(", ")}; there are ${Object.keys(BENCHES).join(", ")}`);
  process.exit(2);
}

const rows: (Measured & { readonly bench: string })[] = [];
for (const [bench, exported] of Object.entries(BENCHES)) {
  const file = fileURLToPath(new URL(`${bench}.ts`, import.meta.url));
  if (!existsSync(file) || (asked.length > 0 && !asked.includes(bench))) continue;
  console.error(`measuring ${bench} …`);
  try {
    rows.push(...(await measure(bench, file, exported)).map((row) => ({ bench, ...row })));
  } catch (error) {
    // the others are still worth having
    console.error(error);
    rows.push({ bench, what: "ended badly", figure: String(error).split("\n")[0] ?? "" });
    process.exitCode = 1;
  }
}

const width = Math.max(4, ...rows.map((row) => row.what.length));
console.log(`${"bench".padEnd(8)}  ${"what".padEnd(width)}  figure`);
for (const { bench, what, figure } of rows) {
  console.log(`${bench.padEnd(8)}  ${what.padEnd(width)}  ${figure}`);
}

async function measure(name: string, file: string, exported: string): Promise<readonly Measured[]> {
  const loaded = SHIPPED.has(name) ? await asShipped(file) : await import(file);
  const module = loaded as Record<string, () => Promise<readonly Measured[]>>;
  const bench = module[exported];
  if (bench === undefined) throw new TypeError(`${file} exports no ${exported}`);
  return bench();
}
