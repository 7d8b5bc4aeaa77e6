import { limbJoint, markOf, type Side, type ViewMarks } from "../../body";
import { footPitch } from "../readings/joint-angles";
import type { WalkPanel } from "../walk";
import type { Sized } from "./sized";

/** A foot whose heel is up by more is read by its ball. Radians (3°), as a placed figure's foot is flat. */
const FLAT_WITHIN = (3 * Math.PI) / 180;

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
