import { soakDetection } from "./detection";

const [asked = "200"] = process.argv.slice(2);
const throws = Number(asked);
if (!Number.isInteger(throws) || throws < 1) {
  console.error(`soak needs a whole number of throws from 1 on, got ${asked}`);
  process.exit(2);
}

const faults = soakDetection(throws);
for (const fault of faults) console.log(`✗ ${fault}`);
console.log(
  faults.length === 0 ? "soak: every target met" : `soak: ${faults.length} targets missed`,
);
process.exitCode = faults.length === 0 ? 0 : 1;
