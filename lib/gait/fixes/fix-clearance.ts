import { otherSide } from "../../body";
import type { Remark } from "../finding";
import { LIFTS } from "../methods/clearance";
import type { Study } from "../study";
import { percent } from "../words";
import { moveFoot } from "./move-pose";
import { movedPanel, type Proposal } from "./proposal";

/** Where people carry the swing toe at passing, leg lengths: 3.4 ± 1.2 % (317 captured steps). */
const CARRIED = 0.034;

/** Where nothing is said of it, leg lengths: for legs that do not bend so far. */
const JUST_CLEAR = 0;
/** How far within the limit a foot is put that was lifted beyond it, leg lengths. */
const INSIDE = 0.01;

/**
 * A swing foot that drags, or is lifted high: brought to where people carry it, or just within, knee solved.
 * One that is lifted otherwise than in the step it goes by is brought to where that has it.
 */
export function fixClearance(
  { walk, leg, pattern }: Study,
  { side: named, panels, measured, expected }: Remark,
): readonly Proposal[] {
  const panel = walk.panels.find(({ id }) => id === panels[0]);
  if (panel === undefined || named === null || leg.kind === "cannot-tell") return [];
  const side = pattern === null ? named : otherSide(named); // a step goes by the name of the foot that carries
  const drags = measured.value < 0;
  const common = drags ? [CARRIED, JUST_CLEAR] : [LIFTS - INSIDE, CARRIED];
  const heights = pattern === null ? common : [expected.value];
  return heights.map((height) => {
    const by = height - measured.value;
    const amount = percent({ value: by, plusMinus: 0 });
    const title = `${by > 0 ? "Raise" : "Lower"} the ${side} foot by ${amount} of a leg`;
    return movedPanel(panel, moveFoot(panel, side, { forward: 0, up: by * leg.value }), title, leg);
  });
}
