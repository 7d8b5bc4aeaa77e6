import { type JointName, limbJoint, markOf, PANEL, type Side } from "../../body";
import type { Point } from "../../geometry";
import { markPoints } from "./mark-points";
import { type Path, type ShapePanel, type Shaper, type Shaping, shapeOf } from "./shape";

const TICK = 26; // panel units: half of the ground's tick under a foot

/** How high a joint is over the ground, or how deep in it. */
export const heightOverGround: Shaper = ({ panel, view, joints }) => {
  const [at] = markPoints(panel.marks[view], joints.slice(0, 1)) ?? [];
  if (at === undefined) return null;
  const ground = { x: at.x, y: PANEL.groundY };
  return shapeOf({ solid: [tick(ground)], arrow: [ground, at], label: at });
};

/** A short level line about a point. */
export function tick({ x, y }: Point): Path {
  return [
    { x: x - TICK, y },
    { x: x + TICK, y },
  ];
}

/** A line between two joints, against the level through the first: the sole from its heel, the shoulders. */
export const tilt: Shaper = ({ panel, view, joints }) => {
  const [heel, tip] = markPoints(panel.marks[view], joints.slice(0, 2)) ?? [];
  if (heel === undefined || tip === undefined) return null;
  return shapeOf({
    dashed: [[heel, { x: tip.x, y: heel.y }]],
    solid: [[heel, tip]],
    label: { x: tip.x, y: Math.max(tip.y, heel.y) },
  });
};

const UNDER_GROUND = 30; // panel units: the arrow runs clear of the foot

/** Where a planted foot was put down, and an arrow under the ground to where it is now. */
export const slip: Shaper = (shaping) => {
  const { panel, earlier, view, remark, joints } = shaping;
  const [joint] = joints;
  if (view !== "side" || earlier === null || remark.side === null || joint === undefined)
    return null;
  const now = markOf(panel.marks.side, joint);
  const put = putDown(shaping, earlier, joint);
  if (now === null || put === null) return null;
  const y = PANEL.groundY + UNDER_GROUND;
  const print = footprint(shaping, earlier, remark.side);
  return shapeOf({
    dashed: print === null ? [] : [print],
    arrow: [
      { x: put.x, y },
      { x: now.x, y },
    ],
    label: { x: (put.x + now.x) / 2, y },
  });
};

/** Where an earlier panel's mark lies on this panel's paper, since the ground went by. */
function putDown(
  { groundShift }: Pick<Shaping, "groundShift">,
  earlier: ShapePanel,
  joint: JointName,
): Point | null {
  const mark = markOf(earlier.marks.side, joint);
  return mark === null ? null : { x: mark.x + groundShift, y: mark.y };
}

/** A shoe's outline about heel and toe, standing on the ground. Panel units. */
const SHOE = { over: 12, instep: 34, toeCap: 14 } as const;

/** The outline of a foot where it was put down; null where its heel or toe is not marked. */
export function footprint(
  shaping: Pick<Shaping, "groundShift">,
  earlier: ShapePanel,
  side: Side,
): Path | null {
  const heel = putDown(shaping, earlier, limbJoint(side, "heel"));
  const tip =
    putDown(shaping, earlier, limbJoint(side, "toe")) ??
    putDown(shaping, earlier, limbJoint(side, "ball"));
  if (heel === null || tip === null || tip.x <= heel.x) return null;
  const [back, front] = [heel.x - SHOE.over, tip.x + SHOE.over];
  const sole = PANEL.groundY;
  return [
    { x: back, y: sole },
    { x: back, y: sole - SHOE.instep },
    { x: back + (front - back) * 0.5, y: sole - SHOE.instep },
    { x: front, y: sole - SHOE.toeCap },
    { x: front, y: sole },
    { x: back, y: sole },
  ];
}

const BRACKET = 16; // panel units: how far a span's ends stand up
const SPAN_UNDER = 44; // panel units under the ground, clear of a slip's arrow

/** How far the feet are apart, as a bracket under the ground. */
export const spanOfFeet: Shaper = ({ panel, view, joints }) => {
  const feet = markPoints(panel.marks[view], joints.slice(0, 2));
  if (feet === null || feet.length < 2) return null;
  const xs = feet.map(({ x }) => x);
  const [from, to] = [Math.min(...xs), Math.max(...xs)];
  const y = PANEL.groundY + SPAN_UNDER;
  return shapeOf({
    solid: [
      [
        { x: from, y: y - BRACKET },
        { x: from, y },
        { x: to, y },
        { x: to, y: y - BRACKET },
      ],
    ],
    label: { x: (from + to) / 2, y },
  });
};

/** A step as the span between its feet; a pose that flies as the height of its lower foot. */
export const paceOfFeet: Shaper = (shaping) =>
  shaping.earlier === null ? heightOverGround(lowestFirst(shaping)) : spanOfFeet(shaping);

function lowestFirst(shaping: Shaping): Shaping {
  const marks = shaping.panel.marks[shaping.view];
  const yOf = (joint: JointName) => markOf(marks, joint)?.y ?? Number.NEGATIVE_INFINITY;
  return { ...shaping, joints: shaping.joints.toSorted((a, b) => yOf(b) - yOf(a)) };
}
