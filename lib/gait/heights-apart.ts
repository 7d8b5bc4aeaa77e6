import { JOINTS, type JointName, type LegLength, markOf } from "../body";
import { rootSumSquare } from "../geometry";
import type { Reading } from "./finding";
import { perPanel } from "./per-panel";
import type { WalkPanel } from "./walk";

/** A joint's height from the side over its height from ahead. */
export interface Apart {
  readonly joint: JointName;
  readonly measured: Reading;
}

/** The joints of a panel that both views have marked. */
export const heightsApart = perPanel(({ marks }: WalkPanel, leg: LegLength): readonly Apart[] => {
  if (leg.kind === "cannot-tell") return [];
  const apart: Apart[] = [];
  for (const joint of JOINTS) {
    const [side, front] = [markOf(marks.side, joint), markOf(marks.front, joint)];
    if (side === null || front === null) continue;
    const measured: Reading = {
      value: (front.y - side.y) / leg.value,
      plusMinus: rootSumSquare(side.precision, front.precision) / leg.value,
      unit: "leg",
    };
    apart.push({ joint, measured });
  }
  return apart;
});
