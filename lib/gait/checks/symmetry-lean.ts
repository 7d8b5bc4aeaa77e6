import type { JointName, Side } from "../../body";
import { gathered } from "../../gathered";
import { rootSumSquare } from "../../geometry";
import { STEP_POSES, type StepPose } from "../../motion";
import { clearlyBeyond, greatestFirst } from "../beyond";
import type { Reading, Remark } from "../finding";
import { frontMark } from "../front-mark";
import { LEAN_LIMITS, LEAN_SOURCE } from "../methods/symmetry";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";
import { capital, degrees } from "../words";
import { cannotTell, sound } from "./answers";
import type { Stride } from "./strides";
import type { Part } from "./symmetry-part";

const DEGREE = Math.PI / 180;

/**
 * Do the shoulders swing to both sides alike, seen from the front? In a walk whose steps mirror each
 * other the tilt of the shoulder line at a pose is the opposite of that at the same pose of the other step.
 * What is left over, half of their sum, is a lean that stays: a shoulder carried low.
 *
 * Shapes:  one part, by the pose that leans farthest; poses that both steps have and that lack a shoulder
 *          are also answered "cannot-tell"
 * Units:   radians; a remark's side is the lower shoulder's
 * Errors:  none; without the shoulders in the front view it answers "cannot-tell"
 * Source:  beside the limits; that it shows beyond twice what captured pairs do is our own choice
 */
const NEEDS = "both shoulders marked in the front view, at the same pose of both steps";
const SHOULDERS: readonly JointName[] = ["left-shoulder", "right-shoulder"];

/** A pose of one step and the same of the other, and the tilts of their shoulders. */
interface Pair {
  readonly pose: StepPose;
  readonly panels: readonly [WalkPanel, WalkPanel];
  readonly tilts: readonly [Tilt, Tilt] | null;
}

/** Of the shoulder line seen from the front: above 0 where the left one is lower. Radians. */
interface Tilt {
  readonly value: number;
  readonly plusMinus: number;
}

export function leanPart(study: Study, { first, second }: Stride): Part {
  const pairs = gathered(STEP_POSES, (pose) => pairOf(study, pose, first[pose], second[pose]));
  const blind: WalkPanel[] = [];
  let farthest: Leaning | undefined;
  for (const { pose, panels, tilts } of pairs) {
    if (tilts === null) {
      blind.push(...panels);
      continue;
    }
    const leaning = { pose, panels, tilts, lean: leanOf(tilts) };
    if (farthest === undefined || farther(leaning, farthest) < 0) farthest = leaning;
  }
  const about = { check: "symmetry", side: null, panels: blind } as const;
  const open = blind.length > 0 || farthest === undefined ? cannotTell(about, NEEDS) : null;
  if (farthest === undefined) return { remark: null, open, sound: null };
  const even = sound({ ...about, panels: farthest.panels }, farthest.lean);
  return { remark: remarkOn(study, farthest), open, sound: even };
}

/** Below 0 where one leans farther than the other, or as far and sooner. */
function farther(one: Leaning, other: Leaning): number {
  const [a, b] = [one.panels[0].frame, other.panels[0].frame];
  return greatestFirst(surely(one.lean), surely(other.lean)) || a - b;
}

/** How far the shoulders lean at least. */
function surely({ value, plusMinus }: Reading): number {
  return Math.abs(value) - plusMinus;
}

function pairOf(
  study: Study,
  pose: StepPose,
  one: WalkPanel | null,
  other: WalkPanel | null,
): Pair[] {
  if (one === null || other === null) return [];
  const [a, b] = [study.once(one, tiltOf), study.once(other, tiltOf)];
  return [{ pose, panels: [one, other], tilts: a === null || b === null ? null : [a, b] }];
}

function tiltOf({ leg }: Study, panel: WalkPanel): Tilt | null {
  const left = frontMark(panel, "left-shoulder", leg);
  const right = frontMark(panel, "right-shoulder", leg);
  if (left === null || right === null) return null;
  const across = Math.abs(left.z - right.z);
  const value = Math.atan2(right.y - left.y, across);
  const plusMinus = rootSumSquare(left.plusMinus, right.plusMinus) / across;
  return Number.isFinite(value) && Number.isFinite(plusMinus) ? { value, plusMinus } : null;
}

function leanOf([a, b]: readonly [Tilt, Tilt]): Reading {
  return {
    value: (a.value + b.value) / 2,
    plusMinus: rootSumSquare(a.plusMinus, b.plusMinus) / 2,
    unit: "rad",
  };
}

interface Leaning {
  readonly pose: StepPose;
  readonly panels: readonly [WalkPanel, WalkPanel];
  readonly tilts: readonly [Tilt, Tilt];
  readonly lean: Reading;
}

function remarkOn({ yardstick }: Study, leaning: Leaning): Remark | null {
  const { panels, tilts, lean } = leaning;
  const size = Math.abs(lean.value);
  const broken = LEAN_LIMITS.find(({ value }) => clearlyBeyond(size, lean.plusMinus, value));
  if (broken === undefined) return null;
  const low: Side = lean.value > 0 ? "left" : "right";
  const both = tilts.every(({ value }) => value * lean.value > 0);
  const measured = { ...lean, value: size };
  const expected = { value: broken.value, plusMinus: 0, unit: "rad" } as const;
  return {
    kind: "remark",
    check: "symmetry",
    level: broken.level,
    yardstick,
    subject: "shoulders",
    side: low,
    panels: panels.map(({ id }) => id),
    frames: panels.map(({ frame }) => frame),
    spots: panels.map(({ id }) => ({ panel: id, view: "front", joints: SHOULDERS })),
    measured,
    expected,
    title: capital(both ? `${low} shoulder stays low` : `${low} shoulder drops on one step only`),
    why: `${sentence(leaning)} Mirrored steps would cancel out; these leave a lean of ${degrees(measured)} to the ${low}, and up to ${toTenths(broken.value)} passes. From the front the walk ${broken.level === "tidy" ? "is a little" : "may look"} lopsided.`,
    source: LEAN_SOURCE,
    beyond: (size - broken.value) / broken.value,
  };
}

function sentence({ pose, panels, tilts }: Leaning): string {
  const [one, other] = panels.map((panel, at) => {
    const tilt = tilts[at]?.value ?? 0;
    const low = tilt > 0 ? "left" : "right";
    return `${degrees({ value: tilt, plusMinus: 0 })} down to the ${low} at frame ${panel.frame}`;
  });
  return `At the ${pose} the shoulders tilt ${one} and ${other}.`;
}

function toTenths(radians: number): string {
  return `${(radians / DEGREE).toFixed(1)}°`;
}
