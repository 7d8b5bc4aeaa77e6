import { soakDetection } from "./detection";
import { soakPowerLoss } from "./power-loss";

const [asked = "200"] = process.argv.slice(2);
const throws = Number(asked);
if (!Number.isInteger(throws) || throws < 1) {
  console.error(`soak needs a whole number of throws from 1 on, got ${asked}`);
  process.exit(2);
}

const CUTS_A_THROW = 5; // a thousand power cuts, unless less is asked for

const faults = [...(await soakPowerLoss(CUTS_A_THROW * throws)), ...soakDetection(throws)];
for (const fault of faults) console.log(`✗ ${fault}`);
console.log(
  faults.length === 0 ? "soak: every target met" : `soak: ${faults.length} targets missed`,
);
process.exitCode = faults.length === 0 ? 0 : 1;
