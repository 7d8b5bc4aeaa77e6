import { hundredth, PANEL, type PoseMarks, type ViewMarks } from "../../body";
import { isStepPose } from "../../motion";
import { ruleFor } from "../pattern";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";
import { laidOnto, mirroredPose } from "./fix-symmetry";

/** The pose as the step has it that this one goes by, on the added panel's own ground. */
export function poseByRule(study: Study, panel: WalkPanel): PoseMarks {
  const { pattern, leg } = study;
  const { pose, weightOn, marks } = panel;
  if (pattern?.kind !== "pattern" || weightOn === null || !isStepPose(pose)) return marks;
  const rule = ruleFor(pattern, study, weightOn);
  const drawn = rule[pose];
  const theirs = pattern.study.leg;
  if (drawn === null || leg.kind === "cannot-tell" || theirs.kind === "cannot-tell") return marks;
  const whose = rule.weightOn === weightOn ? drawn.marks : mirroredPose(drawn.marks);
  const by = leg.value / theirs.value;
  return laidOnto({ side: sized(whose.side, by), front: sized(whose.front, by) }, panel, weightOn);
}

/** Marks of a view as large as asked, on the same ground. */
function sized(marks: ViewMarks, by: number): ViewMarks {
  return Object.fromEntries(
    Object.entries(marks).map(([joint, { x, y, precision }]) => [
      joint,
      {
        x: hundredth(x * by),
        y: hundredth(PANEL.groundY + (y - PANEL.groundY) * by),
        precision: precision * by,
      },
    ]),
  );
}
