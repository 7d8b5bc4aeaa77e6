import type { LegLength } from "../../body";
import type { Fix } from "../fix";
import type { WalkPanel } from "../walk";
import { listed, percent } from "../words";
import { type MovedPose, marksMoved } from "./move-pose";

/** A way to settle a remark, before anybody saw whether it does. */
export type Proposal = Fix;

/** A proposal that moves one panel's marks; where a leg does not reach, its title says so. */
export function movedPanel(
  panel: WalkPanel,
  { marks, short }: MovedPose,
  title: string,
  leg: LegLength,
): Proposal {
  const legUnits = leg.kind === "value" ? leg.value : Number.NaN;
  const legs = short.map(
    ({ side, by }) =>
      `the ${side} leg ${percent({ value: by / legUnits, plusMinus: 0 })} of a leg short`,
  );
  return {
    title: legs.length === 0 ? title : `${title}, ${listed(legs)} and straight`,
    changes: marksMoved(panel, marks),
  };
}
