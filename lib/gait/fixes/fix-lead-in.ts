import type { Side } from "../../body";
import type { Remark } from "../finding";
import { footSinceStand, hipsSinceStand, leadingIn } from "../readings/leading-in";
import type { Study } from "../study";
import { percent } from "../words";
import { moveBody, moveFoot } from "./move-pose";
import { movedPanel, type Proposal } from "./proposal";

/** Where the hips are brought to: people at passing have them 3.1 % of a leg toward the foot that stands. */
const SHIFTED = 0.031;

/**
 * A lead-in inside the loop is called a breakdown; a foot that moved goes back onto its footprint, and a body that
 * stayed back goes over the foot that stays, feet kept and knees solved.
 */
export function fixLeadIn(study: Study, remark: Remark): readonly Proposal[] {
  const { side, measured } = remark;
  const panel = study.walk.panels.find(({ id }) => id === remark.panels.at(-1));
  if (panel === undefined) return [];
  if (measured.unit === "poses") {
    const { id, weightOn } = panel;
    const title = `Frame ${panel.frame}: call it breakdown`;
    return [{ title, changes: [{ kind: "relabel", panel: id, pose: "breakdown", weightOn }] }];
  }
  if (side === null || study.leg.kind === "cannot-tell") return [];
  const view = remark.spots.at(-1)?.view;
  const proposal = view === "front" ? overFoot(study, side) : ontoPrint(study, side);
  return proposal === null ? [] : [proposal];
}

function ontoPrint(study: Study, side: Side): Proposal | null {
  const { leg, walk } = study;
  const feet = footSinceStand(study, leadingIn(walk.panels), side);
  if (feet === null || leg.kind === "cannot-tell") return null;
  const changes = feet.flatMap(({ panel, measured }) => {
    const moved = moveFoot(panel, side, { forward: -measured.value * leg.value, up: 0 });
    return movedPanel(panel, moved, "", leg).changes;
  });
  return { title: `Put the ${side} foot on its footprint`, changes };
}

function overFoot(study: Study, side: Side): Proposal | null {
  const { leg, walk } = study;
  const hips = hipsSinceStand(study, leadingIn(walk.panels), side);
  if (hips === null || leg.kind === "cannot-tell") return null;
  const toward = side === "right" ? 1 : -1;
  const by = toward * (SHIFTED - hips.measured.value);
  const { panel } = hips;
  // The walker's right lies to the left of the front view.
  const moved = moveBody(panel, { forward: 0, up: 0, aside: -by * leg.value });
  const amount = percent({ value: by, plusMinus: 0 });
  const way = by > 0 ? "right" : "left";
  const title = `Shift the body of the lead-in to the ${way} by ${amount} of a leg`;
  return movedPanel(panel, moved, title, leg);
}
