import {
  footJoints,
  markOf,
  mirroredMarks,
  type PoseMarks,
  type Side,
  shiftedMarks,
  type ViewMarks,
} from "../../body";
import { VIEWS } from "../../geometry";
import type { Remark } from "../finding";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";
import { sided } from "../words";
import { marksMoved } from "./move-pose";
import type { Proposal } from "./proposal";

/**
 * Two poses that do not mirror each other: the later drawn from the earlier one mirrored, or the other way
 * round. The mirrored pose stands on its own ground: its standing foot stays where it was. The marks that
 * the panel has are moved, none is added. Two step lengths are for the artist to even out.
 */
export function fixSymmetry({ walk }: Study, { panels, spots }: Remark): readonly Proposal[] {
  const pair = panels.map((id) => walk.panels.find((panel) => panel.id === id));
  const [first, second] = pair;
  if (pair.length !== 2 || first === undefined || second === undefined) return [];
  if (spots.length !== 2 || first.pose !== second.pose) return [];
  return [mirrored(first, second), mirrored(second, first)].filter((fix) => fix !== null);
}

function mirrored(from: WalkPanel, to: WalkPanel): Proposal | null {
  const { weightOn } = to;
  if (weightOn === null) return null;
  const marks = laidOnto(mirroredPose(from.marks), to, weightOn);
  const changes = marksMoved(to, marks);
  if (changes.length === 0) return null;
  return { title: `Mirror the ${sided(weightOn, to.pose)} from the other step`, changes };
}

/** Both views of a pose, left and right exchanged. */
export function mirroredPose({ side, front }: PoseMarks): PoseMarks {
  return { side: mirroredMarks(side, "side"), front: mirroredMarks(front, "front") };
}

/** A panel's marks as another drawing has them, its standing foot where it was. None is added. */
export function laidOnto(drawn: PoseMarks, to: WalkPanel, weightOn: Side): PoseMarks {
  const [side, front] = VIEWS.map((view) => onItsGround(drawn[view], to.marks[view], weightOn));
  return { side: side ?? {}, front: front ?? {} };
}

/** The other marks of a view, shifted until the standing foot is where this panel has it. */
function onItsGround(other: ViewMarks, own: ViewMarks, weightOn: Side): ViewMarks {
  const joints = Object.keys(own) as (keyof ViewMarks)[];
  const foot = footJoints(weightOn).find(
    (joint) => markOf(other, joint) !== null && markOf(own, joint) !== null,
  );
  const [there, here] =
    foot === undefined ? [null, null] : [markOf(other, foot), markOf(own, foot)];
  const by = there === null || here === null ? 0 : here.x - there.x;
  const moved = shiftedMarks(other, joints, { x: by, y: 0 });
  return Object.fromEntries(
    joints.flatMap((joint) => {
      const mark = own[joint];
      const to = markOf(moved, joint);
      return mark === undefined
        ? []
        : [[joint, to === null ? mark : { ...mark, x: to.x, y: to.y }]];
    }),
  );
}
