import { limbJoint, markOf, type Side, sideToGround, type ViewMarks } from "../../body";
import { placeOf } from "../ground-mark";
import { footPitch } from "../panel-readings";
import { stanceOf } from "../stance";
import type { Step } from "../step";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";
import type { Sized } from "./sized";

/** A foot that pitches by less is read by its heel. Radians (10°): what passes as flat. */
const FLAT_WITHIN = (10 * Math.PI) / 180;

/**
 * Where a foot that stands in a panel was put down, as the other panels of its stance have it: where its
 * heel lies when it is flat. The panel nearest in time counts.
 *
 * Units:   leg lengths along the ground
 * Errors:  none; null where no other panel of its stance has the foot marked
 */
export function footprint(study: Study, panel: WalkPanel, side: Side, sized: Sized): number | null {
  const stance = stanceOf(study.steps, panel, side);
  if (stance === null) return null;
  const near = standingIn(study, stance, side)
    .filter((one) => one !== panel)
    .toSorted((a, b) => Math.abs(a.frame - panel.frame) - Math.abs(b.frame - panel.frame));
  for (const one of near) {
    const print = printOn(one.marks.side, one, side, sized);
    const place = placeOf(one, study.walk);
    if (print !== null && Number.isFinite(place)) {
      return sideToGround({ x: print, y: 0 }, { place, legLength: sized.legUnits }).x;
    }
  }
  return null;
}

/** The panels in which the foot of a stance is told to stand. */
function standingIn({ steps }: Study, stance: Step, side: Side): WalkPanel[] {
  const after = steps[steps.indexOf(stance) + 1];
  const leaving = [stance.next, after?.down ?? null].filter((panel) => panel !== null);
  return [...stance.panels, ...leaving].filter((panel) => stanceOf(steps, panel, side) === stance);
}

/**
 * Where a foot on the ground would lie with its heel flat, by the mark that is down: its heel, else its
 * ball, else its toe. Panel units across the paper.
 */
export function printOn(
  marks: ViewMarks,
  { weightOn }: Pick<WalkPanel, "weightOn">,
  side: Side,
  { size: { foot }, legUnits }: Pick<Sized, "size" | "legUnits">,
): number | null {
  const pitch = footPitch(marks, side);
  const heelUp = pitch.kind === "value" ? pitch.value < -FLAT_WITHIN : weightOn !== side;
  const at = (part: "heel" | "ball" | "toe") => markOf(marks, limbJoint(side, part))?.x ?? null;
  const heel = at("heel");
  if (heel !== null && !heelUp) return heel;
  const ball = at("ball");
  if (ball !== null) return ball - (foot.ball - foot.heel) * legUnits;
  const toe = at("toe");
  return toe === null ? null : toe - (foot.toe - foot.heel) * legUnits;
}
