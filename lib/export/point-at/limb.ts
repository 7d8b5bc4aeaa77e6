import type { JointName, ViewMarks } from "../../body";
import { distance, type Point } from "../../geometry";
import { sideOf } from "../draw-marks";
import { markPoints, movedTo } from "./mark-points";
import { type Line, type Path, type RemarkShape, type Shaper, shapeOf } from "./shape";

const BESIDE = 26; // panel units from a bone to the ghost of its right length
const END = 12; // panel units: half of the tick that ends a ghost

/** A bone as it is drawn, and beside it as long as it should be; of a pair the one that is told, by the other. */
export const lengthOfBone: Shaper = ({ panel, view, joints, remark }) => {
  const marks = panel.marks[view];
  const pair = remark.spots.filter((spot) => spot.panel === panel.id && spot.view === view);
  const isOwn = (names: typeof joints) => names.every((name) => sideOf(name) === remark.side);
  const own = pair.find((spot) => isOwn(spot.joints)) ?? { joints };
  const other = pair.find((spot) => spot !== own);
  const bone = boneOf(marks, own.joints);
  const partner = other === undefined ? null : boneOf(marks, other.joints);
  if (bone === null) return null;
  const length = distance(...bone);
  const { value } = remark.measured;
  if (partner === null) return besideRight(bone, length / (1 + value));
  const longer = length > distance(...partner);
  return besideRight(
    bone,
    length * (longer ? (2 - value) / (2 + value) : (2 + value) / (2 - value)),
  );
};

/** From hip to ankle as it is drawn, and beside it as far as thigh and shank reach. */
export const reachOfLeg: Shaper = ({ panel, view, joints, remark, legLength }) => {
  const leg = boneOf(panel.marks[view], joints);
  if (leg === null) return null;
  return besideRight(leg, distance(...leg) - remark.measured.value * legLength);
};

function boneOf(marks: ViewMarks, joints: readonly JointName[]): Line | null {
  const [upper, lower] = markPoints(marks, joints.slice(0, 2)) ?? [];
  return upper === undefined || lower === undefined ? null : [upper, lower];
}

/** A bone and the ghost of its right length. Units: panel units. */
function besideRight([upper, lower]: Line, right: number): RemarkShape | null {
  const length = distance(upper, lower);
  if (!(length > 0 && right > 0)) return null;
  const along = { x: (lower.x - upper.x) / length, y: (lower.y - upper.y) / length };
  const across = { x: -along.y, y: along.x };
  const beside = (far: number, off: number): Point => ({
    x: upper.x + along.x * far + across.x * off,
    y: upper.y + along.y * far + across.y * off,
  });
  const ends: readonly Path[] = [0, right].map((far) => [
    beside(far, BESIDE - END),
    beside(far, BESIDE + END),
  ]);
  return shapeOf({
    dashed: [[beside(0, BESIDE), beside(right, BESIDE)], ...ends],
    solid: [[upper, lower]],
    arrow: [beside(right, BESIDE / 2), beside(length, BESIDE / 2)],
    label: beside(length / 2, BESIDE + END),
  });
}

/** Hip, knee and ankle: the leg, the straight line that the knee should be ahead of, and how far behind it lies. */
export const bendOfKnee: Shaper = ({ panel, view, joints }) => {
  const limb = markPoints(panel.marks[view], joints.slice(0, 3));
  const [hip, knee, ankle] = limb ?? [];
  if (limb === null || hip === undefined || knee === undefined || ankle === undefined) return null;
  return shapeOf({
    dashed: [[hip, ankle]],
    solid: [limb],
    arrow: [nearestOn(hip, ankle, knee), knee],
    label: knee,
  });
};

function nearestOn(from: Point, to: Point, point: Point): Point {
  const way = { x: to.x - from.x, y: to.y - from.y };
  const square = way.x * way.x + way.y * way.y;
  const share = square > 0 ? ((point.x - from.x) * way.x + (point.y - from.y) * way.y) / square : 0;
  return { x: from.x + way.x * share, y: from.y + way.y * share };
}

/** A leg over the leg of the panel before, hung from the same hip. */
export const legOverEarlier: Shaper = ({ panel, earlier, view, joints, earlierJoints }) => {
  const limb = markPoints(panel.marks[view], joints);
  const before = earlier === null ? null : markPoints(earlier.marks[view], earlierJoints);
  const [hip, knee] = limb ?? [];
  if (limb === null || hip === undefined || knee === undefined) return null;
  const hung = before?.[0] === undefined ? [] : [movedTo(before, before[0], hip)];
  return shapeOf({ dashed: hung, solid: [limb], label: knee });
};

/** A hand and a foot that go ahead on the same side, linked. */
export const handAndFoot: Shaper = ({ panel, view, joints }) => {
  const link = markPoints(panel.marks[view], joints.slice(0, 2));
  const [hand, foot] = link ?? [];
  if (hand === undefined || foot === undefined) return null;
  const middle = { x: (hand.x + foot.x) / 2, y: (hand.y + foot.y) / 2 };
  return shapeOf({ dashed: [[hand, foot]], rings: [hand, foot], label: middle });
};
