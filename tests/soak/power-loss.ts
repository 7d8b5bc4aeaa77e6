import { temporaryFolder } from "../support/hub-under-test";
import { cutPower } from "../support/power-cuts";

/** Cuts the power at many moments, and answers what was missing afterwards. */
export async function soakPowerLoss(cuts: number): Promise<readonly string[]> {
  const folder = temporaryFolder();
  try {
    const seed = Number(process.env.SEED ?? Date.now() % 1e6);
    const { acknowledged, lostBytes, faults } = await cutPower(folder.path, cuts, seed);
    console.error(
      `power loss (SEED=${seed}): ${cuts} cuts, ${acknowledged} acknowledged, ${lostBytes} bytes lost, ${faults.length} faults`,
    );
    return faults;
  } finally {
    folder.remove();
  }
}
