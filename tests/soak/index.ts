import { type AskedFor, askedFor } from "./asked-for";
import { PARTS } from "./parts";

const asked = read(process.argv.slice(2));

const faults: string[] = [];
for (const name of asked.parts) faults.push(...((await PARTS[name]?.(asked.throws)) ?? []));
for (const fault of faults) console.log(`✗ ${fault}`);
console.log(
  faults.length === 0 ? "soak: every target met" : `soak: ${faults.length} targets missed`,
);
process.exitCode = faults.length === 0 ? 0 : 1;

function read(words: readonly string[]): AskedFor {
  try {
    return askedFor(words, Object.keys(PARTS));
  } catch (cause) {
    console.error(cause instanceof RangeError ? cause.message : cause);
    process.exit(2);
  }
}
