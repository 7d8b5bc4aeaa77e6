import { gathered } from "../../gathered";
import { distance, median, type Point } from "../../geometry";
import { type JointName, type LimbJoint, SIDES } from "../joint";
import type { PoseMarks, ViewMarks } from "../mark";
import { markOf } from "../mark-of";
import { limbJoint } from "../side";
import type { FigureSize } from "./figure-size";

/**
 * A figure's sizes as they are drawn, where they are: thigh, shank, arms, trunk and head from the side
 * views; the feet and the distances across from the stand alone. What is not marked keeps the
 * size it would have had. Of several drawings the median counts, of both sides the mean.
 *
 * Shapes:  the stand where there is one, or other poses
 * Units:   panel units; `legUnits` is a leg on the paper
 */
export function measuredSize(
  plain: FigureSize,
  drawn: { readonly stand: PoseMarks | null; readonly poses: readonly PoseMarks[] },
  legUnits: number,
): FigureSize {
  const { stand, poses } = drawn;
  const sides = stand === null ? poses.map(({ side }) => side) : [stand.side];
  const known = (lengths: readonly number[], otherwise: number) =>
    lengths.length === 0 ? otherwise : median(lengths) / legUnits;
  const limb = (upper: LimbJoint, lower: LimbJoint) =>
    gathered(sides, (marks) =>
      gathered(SIDES, (side) => between(marks, limbJoint(side, upper), limbJoint(side, lower))),
    );
  return {
    ...plain,
    thigh: known(limb("hip", "knee"), plain.thigh),
    shank: known(limb("knee", "ankle"), plain.shank),
    upperArm: known(limb("shoulder", "elbow"), plain.upperArm),
    forearm: known(limb("elbow", "wrist"), plain.forearm),
    neck: known(gathered(sides, hipsToNeck), plain.neck),
    shoulders: known(gathered(sides, hipsToShoulders), plain.shoulders),
    head: known(
      gathered(sides, (marks) => between(marks, "neck", "head")),
      plain.head,
    ),
    foot:
      stand === null
        ? scaledFoot(plain.foot, known(gathered(sides, soles), plain.foot.toe - plain.foot.heel))
        : footOf(stand.side, plain.foot, legUnits),
    half: stand === null ? plain.half : halvesOf(stand.front, plain.half, legUnits),
  };
}

function between(marks: ViewMarks, from: JointName, to: JointName): number[] {
  const start = markOf(marks, from);
  const end = markOf(marks, to);
  if (start === null || end === null) return [];
  const length = distance(start, end);
  return length > 0 ? [length] : [];
}

/** The middle of a pair, or null unless both are marked. */
export function pairMiddle(marks: ViewMarks, part: "hip" | "shoulder"): Point | null {
  const left = markOf(marks, limbJoint("left", part));
  const right = markOf(marks, limbJoint("right", part));
  if (left === null || right === null) return null;
  return { x: (left.x + right.x) / 2, y: (left.y + right.y) / 2 };
}

function hipsToNeck(marks: ViewMarks): number[] {
  const hips = pairMiddle(marks, "hip");
  const neck = markOf(marks, "neck");
  return hips === null || neck === null ? [] : [distance(hips, neck)];
}

function hipsToShoulders(marks: ViewMarks): number[] {
  const hips = pairMiddle(marks, "hip");
  const shoulders = pairMiddle(marks, "shoulder");
  return hips === null || shoulders === null ? [] : [distance(hips, shoulders)];
}

/**
 * How long every foot is: heel to ball to toe; without a ball heel to toe, where the heel is not up,
 * since a foot that peels off is bent.
 */
function soles(marks: ViewMarks): number[] {
  return gathered(SIDES, (side) => {
    const [heel, ball, toe] = (["heel", "ball", "toe"] as const).map((part) =>
      markOf(marks, limbJoint(side, part)),
    );
    if (heel == null || toe == null) return [];
    if (ball != null) return [distance(heel, ball) + distance(ball, toe)];
    const length = distance(heel, toe);
    return toe.y - heel.y > HEEL_UP * length ? [] : [length];
  }).filter((length) => length > 0);
}

/** A heel higher over its toe than this share of the foot is up: 10°, what passes as flat. */
const HEEL_UP = Math.sin((10 * Math.PI) / 180);

/** A foot of its own shape and another length. */
function scaledFoot(foot: FigureSize["foot"], length: number): FigureSize["foot"] {
  const by = length / (foot.toe - foot.heel);
  return { ankle: foot.ankle, heel: by * foot.heel, ball: by * foot.ball, toe: by * foot.toe };
}

/** The stand's feet about their ankles, the mean of both that are whole. */
function footOf(marks: ViewMarks, plain: FigureSize["foot"], legUnits: number) {
  const feet = gathered(SIDES, (side) => {
    const at = (part: LimbJoint) => markOf(marks, limbJoint(side, part));
    const [ankle, heel, toe] = [at("ankle"), at("heel"), at("toe")];
    if (ankle === null || heel === null || toe === null) return [];
    const ball = at("ball");
    const share = (plain.ball - plain.heel) / (plain.toe - plain.heel);
    const sole = Math.max(heel.y, toe.y, ball?.y ?? heel.y);
    return [
      {
        ankle: sole - ankle.y,
        heel: heel.x - ankle.x,
        ball: (ball?.x ?? heel.x + share * (toe.x - heel.x)) - ankle.x,
        toe: toe.x - ankle.x,
      },
    ];
  }).filter(({ ankle, heel, ball, toe }) => ankle > 0 && heel < ball && ball < toe);
  if (feet.length === 0) return plain;
  const mean = (of: (foot: FigureSize["foot"]) => number) =>
    feet.reduce((sum, foot) => sum + of(foot), 0) / feet.length / legUnits;
  return {
    ankle: mean(({ ankle }) => ankle),
    heel: mean(({ heel }) => heel),
    ball: mean(({ ball }) => ball),
    toe: mean(({ toe }) => toe),
  };
}

function halvesOf(front: ViewMarks, plain: FigureSize["half"], legUnits: number) {
  const half = (part: LimbJoint, otherwise: number) => {
    const left = markOf(front, limbJoint("left", part));
    const right = markOf(front, limbJoint("right", part));
    const apart = left === null || right === null ? 0 : left.x - right.x; // his left is our right
    return apart > 0 ? apart / 2 / legUnits : otherwise;
  };
  return {
    hips: half("hip", plain.hips),
    shoulders: half("shoulder", plain.shoulders),
    feet: half("ankle", half("heel", plain.feet)),
  };
}
