import { type JointName, markOf, type ViewMarks } from "../../body";
import type { Point } from "../../geometry";
import { hipsMiddle } from "../draw-panel";
import type { Box } from "../shapes";
import { arcBetween, type Passed } from "./arc-between";
import { markPoints, middleOf } from "./mark-points";
import { type Beside, type Line, type RemarkShape, type Shaper, shapeOf } from "./shape";

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

/**
 * The way of the hips, or of another joint, from the panel before, and a sign at the hitch on it: the arc that
 * their poses draw, the panels beside among them.
 */
export const hitchOnPath: Shaper = ({ panel, view, joints, ...shaping }) => {
  const { earlier, earlierJoints, groundShift, before, after } = shaping;
  const spotOf = (beside: Beside | null, of: typeof joints): Passed | null => {
    const middle = beside === null ? null : middleOfMarks(beside.panel.marks[view], of);
    if (beside === null || middle === null) return null;
    const shift = view === "side" ? beside.groundShift : 0;
    return { at: beside.panel.frame, x: middle.x + shift, y: middle.y };
  };
  const from = spotOf(earlier === null ? null : { panel: earlier, groundShift }, earlierJoints);
  const to = spotOf({ panel, groundShift: 0 }, joints);
  if (from === null || to === null) return null;
  const [here, was] = [
    { x: to.x, y: to.y },
    { x: from.x, y: from.y },
  ];
  const way = arcBetween([spotOf(before, earlierJoints), from, to, spotOf(after, joints)]);
  const middle = way[Math.floor(way.length / 2)] ?? here;
  return shapeOf({
    dashed: [way],
    solid: [
      [
        { x: middle.x - BUMP, y: middle.y + BUMP },
        { x: middle.x, y: middle.y - BUMP },
        { x: middle.x + BUMP, y: middle.y + BUMP },
      ],
    ],
    rings: [was, here],
    label: middle,
  });
};

/** The middle of those of the joints that are marked. */
function middleOfMarks(marks: ViewMarks, joints: readonly JointName[]): Point | null {
  const known = joints.map((joint) => markOf(marks, joint)).filter((mark) => mark !== null);
  return known.length === 0 ? null : middleOf(known);
}
