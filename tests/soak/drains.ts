import { type Drain, drainUnderLoad, faultsOf } from "../support/drains";
import { temporaryFolder } from "../support/hub-under-test";
import { setup } from "../support/programs";

const LOAD = { hands: 6, watchers: 40, strokes: 300 };

/** Ends a hub by SIGTERM again and again while people draw and look on, and answers what was amiss. */
export async function soakDrains(drains: number): Promise<readonly string[]> {
  await setup();
  const folder = temporaryFolder();
  const faults: string[] = [];
  console.error("drain  exit  ms to exit  acknowledged  missing  back after ms, first–last");
  try {
    for (let drain = 1; drain <= drains; drain++) {
      const found = await drainUnderLoad(folder.path, LOAD);
      tell(drain, found);
      faults.push(...faultsOf(found, LOAD).map((fault) => `drain ${drain}: ${fault}`));
    }
  } finally {
    folder.remove();
  }
  return faults;
}

function tell(drain: number, { code, ms, acknowledged, missing, returns }: Drain): void {
  const [first, last] = [Math.min(...returns), Math.max(...returns)];
  const cells = [
    `${drain}`.padStart(5),
    `${code}`.padStart(5),
    ms.toFixed(0).padStart(11),
    `${acknowledged}`.padStart(13),
    `${missing}`.padStart(8),
    `${first.toFixed(0)}–${last.toFixed(0)}`.padStart(16),
  ];
  console.error(cells.join(" "));
}
