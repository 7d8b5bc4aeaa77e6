import { type JointName, markOf, type ViewMarks } from "../../body";
import type { Point } from "../../geometry";
import { hipsMiddle } from "../draw-panel";
import type { Box } from "../shapes";
import { markPoints, middleOf } from "./mark-points";
import { type Line, type RemarkShape, type Shaper, type Shaping, shapeOf } from "./shape";

const EDGE = 20; // panel units that a level stays off the paper's edges
const ARROW_FROM_EDGE = 50; // panel units

/** The hips' height here, that of the pose they are held against, and the gap between. */
export const hipLevels: Shaper = ({ panel, earlier, view, window }) => {
  const here = hipsMiddle(panel.marks[view]);
  const there = earlier === null ? null : hipsMiddle(earlier.marks[view]);
  return here === null || there === null ? null : levels(here.y, there.y, window);
};

/** Two levels across the view: the one held against dashed, the gap between them washed over. */
function levels(here: number, there: number, window: Box): RemarkShape {
  const [left, right] = [window.x + EDGE, window.x + window.width - EDGE];
  const across = (y: number): Line => [
    { x: left, y },
    { x: right, y },
  ];
  const x = right - ARROW_FROM_EDGE;
  return shapeOf({
    area: {
      x: left,
      y: Math.min(here, there),
      width: right - left,
      height: Math.abs(here - there),
    },
    dashed: [across(there)],
    solid: [across(here)],
    arrow: [
      { x, y: there },
      { x, y: here },
    ],
    label: { x, y: here },
  });
}

const REACH = 90; // panel units to either side of a joint whose height is compared

/** A joint's height in this view, and the height that the other view gives it. */
export const heightInBothViews: Shaper = ({ panel, view, joints }) => {
  const other = view === "side" ? "front" : "side";
  const [here] = markPoints(panel.marks[view], joints.slice(0, 1)) ?? [];
  const [there] = markPoints(panel.marks[other], joints.slice(0, 1)) ?? [];
  if (here === undefined || there === undefined) return null;
  const level = (y: number): Line => [
    { x: here.x - REACH, y },
    { x: here.x + REACH, y },
  ];
  return shapeOf({
    dashed: [level(there.y)],
    solid: [level(here.y)],
    rings: [here],
    arrow: [
      { x: here.x + REACH * 0.7, y: there.y },
      { x: here.x + REACH * 0.7, y: here.y },
    ],
    label: { x: here.x + REACH, y: (here.y + there.y) / 2 },
  });
};

const BUMP = 22; // panel units: half of the sign on a path

/** The way of the hips, or of another joint, from the panel before, and a sign at the hitch on it. */
export const hitchOnPath: Shaper = (shaping) => {
  const { panel, view, joints } = shaping;
  const here = middleOfMarks(panel.marks[view], joints);
  const before = onThisPaper(shaping);
  if (here === null || before === null) return null;
  const middle = middleOf([before, here]);
  return shapeOf({
    dashed: [[before, here]],
    solid: [
      [
        { x: middle.x - BUMP, y: middle.y + BUMP },
        { x: middle.x, y: middle.y - BUMP },
        { x: middle.x + BUMP, y: middle.y + BUMP },
      ],
    ],
    rings: [before, here],
    label: middle,
  });
};

/** Where the earlier panel's joints lie on this paper, with the ground that went by. */
function onThisPaper({ earlier, view, earlierJoints, groundShift }: Shaping): Point | null {
  if (earlier === null) return null;
  const was = middleOfMarks(earlier.marks[view], earlierJoints);
  return was === null ? null : { x: was.x + (view === "side" ? groundShift : 0), y: was.y };
}

/** The middle of those of the joints that are marked. */
function middleOfMarks(marks: ViewMarks, joints: readonly JointName[]): Point | null {
  const known = joints.map((joint) => markOf(marks, joint)).filter((mark) => mark !== null);
  return known.length === 0 ? null : middleOf(known);
}
