import type { Side } from "../../body";
import { distance } from "../../geometry";
import type { Remark } from "../finding";
import { bearingFeet } from "../foot";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";
import { percent } from "../words";
import { withLengths } from "./limb-lengths";
import { limbSeen } from "./limb-of";
import { type MovedPose, moveBody, moveFoot } from "./move-pose";
import { movedPanel, type Proposal } from "./proposal";

/**
 * A leg that does not reach its foot: the body brought down until it does, or the foot closer; of a foot
 * that swings the foot first. Thigh and shank get the figure's own lengths.
 */
export function fixReach(study: Study, { side, panels }: Remark): readonly Proposal[] {
  const panel = study.walk.panels.find(({ id }) => id === panels[0]);
  return panel === undefined || side === null ? [] : reachedFoot(study, panel, side);
}

/** The ways in which a leg comes to reach its foot, the likeliest first; none where it does. */
export function reachedFoot(study: Study, panel: WalkPanel, side: Side): readonly Proposal[] {
  const { leg } = study;
  const { root, end, upper, lower } = limbSeen(study, panel, side, "leg");
  if (root === null || end === null || upper === null || lower === null) return [];
  if (leg.kind === "cannot-tell") return [];
  const beyond = distance(root, end) - (upper + lower);
  if (!(beyond > 0)) return [];
  const told = (moved: MovedPose, title: string, by: number): Proposal => {
    const marks = withLengths(study, { ...panel, marks: moved.marks }, side, "leg") ?? moved.marks;
    const short = moved.short.filter((one) => one.side !== side);
    const amount = percent({ value: by / leg.value, plusMinus: 0 });
    return movedPanel(panel, { marks, short }, `${title} by ${amount} of a leg`, leg);
  };
  const ways: Proposal[] = [];
  const aside = root.x - end.x;
  const reaches = upper + lower > Math.abs(aside);
  if (reaches) {
    const down = end.y - root.y - Math.sqrt((upper + lower) ** 2 - aside ** 2);
    const lowered = moveBody(panel, { forward: 0, up: -down, aside: 0 });
    ways.push(told(lowered, "Lower the body", down));
  }
  const share = beyond / distance(root, end);
  const way = { forward: aside * share, up: (end.y - root.y) * share };
  const closer = told(moveFoot(panel, side, way), `Bring the ${side} foot closer`, beyond);
  return bearingFeet(panel)?.includes(side) ? [...ways, closer] : [closer, ...ways];
}
