import {
  type LegLength,
  limbJoint,
  markOf,
  otherSide,
  PANEL,
  SIDES,
  type Side,
  segmentLengths,
} from "../body";
import { type Answer, answerOf, type NoReading, type Value } from "./answer";
import { hipHeight } from "./hip-height";
import { FLAT_WITHIN } from "./methods/foot-roll";
import { baseLength, baseWidth } from "./readings/base-of-support";
import {
  ankleBend,
  elbowBend,
  footPitch,
  hipBend,
  kneeBend,
  pelvisTilt,
  shoulderTilt,
  trunkLean,
} from "./readings/joint-angles";
import { massAhead, massBeside, massHeight, massPlace } from "./readings/mass-readings";
import type { WalkPanel } from "./walk";

/** Ids of what is read on one panel; whoever shows them has the words. */
export const PANEL_READING_IDS = [
  "hip-height",
  "knee-bend",
  "foot-pitch",
  "weight-foot-flat",
  "mass-height",
  "mass-ahead",
  "mass-beside",
  "base-length",
  "base-width",
  "toe-height",
  "hip-bend",
  "ankle-bend",
  "elbow-bend",
  "trunk-lean",
  "pelvis-tilt",
  "shoulder-tilt",
  "thigh-length",
  "shank-length",
  "foot-length",
  "upper-arm-length",
  "forearm-length",
  "neck-length",
] as const;
export type PanelReadingId = (typeof PANEL_READING_IDS)[number];

/** Yes or no, where a number would say less. */
export interface YesNo {
  readonly kind: "yes-no";
  readonly value: boolean;
}

/** One reading of a panel; `side` is null where it belongs to neither. */
export interface PanelReading {
  readonly id: PanelReadingId;
  readonly side: Side | null;
  readonly answer: Value | YesNo | NoReading;
}

/**
 * Everything that one panel alone can tell.
 *
 * Shapes:  each reading by its id; lengths as they are drawn from the side, of the bones that are marked
 * Units:   heights, bases, distances and lengths in leg lengths; angles in radians, bent, toe-up and forward positive
 * Errors:  none; each reading answers for itself what it still needs
 * @param load what is carried, as a share of body mass
 */
export function panelReadings(
  panel: WalkPanel,
  leg: LegLength,
  load: number,
): readonly PanelReading[] {
  const marks = panel.marks.side;
  const mass = massPlace(panel, "side", leg, load);
  const ofBoth = (id: PanelReadingId, read: (side: Side) => Answer): readonly PanelReading[] =>
    SIDES.map((side) => ({ id, side, answer: read(side) }));
  return [
    { id: "hip-height", side: null, answer: hipHeight(panel, leg) },
    ...ofBoth("knee-bend", (side) => kneeBend(marks, side)),
    ...ofBoth("foot-pitch", (side) => footPitch(marks, side)),
    { id: "weight-foot-flat", side: panel.weightOn, answer: weightFootFlat(panel) },
    { id: "mass-height", side: null, answer: massHeight(panel, leg, load, mass) },
    { id: "mass-ahead", side: panel.weightOn, answer: massAhead(panel, leg, load, mass) },
    { id: "mass-beside", side: panel.weightOn, answer: massBeside(panel, leg, load) },
    { id: "base-length", side: null, answer: baseLength(panel, leg) },
    { id: "base-width", side: null, answer: baseWidth(panel, leg) },
    ...toeHeights(panel, leg),
    ...ofBoth("hip-bend", (side) => hipBend(marks, side)),
    ...ofBoth("ankle-bend", (side) => ankleBend(marks, side)),
    ...ofBoth("elbow-bend", (side) => elbowBend(marks, side)),
    { id: "trunk-lean", side: null, answer: trunkLean(marks) },
    { id: "pelvis-tilt", side: null, answer: pelvisTilt(panel.marks.front) },
    { id: "shoulder-tilt", side: null, answer: shoulderTilt(panel.marks.front) },
    ...lengths(panel, leg),
  ];
}

function lengths({ marks }: WalkPanel, leg: LegLength): readonly PanelReading[] {
  if (leg.kind === "cannot-tell") return [];
  return segmentLengths(marks.side).map(({ segment, side, value, plusMinus }): PanelReading => {
    const needs = `both ends of the ${segment} marked in the side view`;
    const answer = answerOf(value / leg.value, plusMinus / leg.value, "leg", needs);
    return { id: `${segment}-length`, side, answer };
  });
}

function weightFootFlat({ weightOn, marks }: WalkPanel): YesNo | NoReading {
  if (weightOn === null) return { kind: "cannot-tell", needs: "the side that carries the weight" };
  const pitch = footPitch(marks.side, weightOn);
  if (pitch.kind === "cannot-tell") return pitch;
  const away = Math.abs(pitch.value);
  if (Math.abs(away - FLAT_WITHIN) < pitch.plusMinus) {
    return { kind: "cannot-tell", needs: `the ${weightOn} heel and ball marked more exactly` };
  }
  return { kind: "yes-no", value: away <= FLAT_WITHIN };
}

/** Height of the swinging foot's toe over the ground line, in the poses that have one. Leg lengths. */
function toeHeights({ pose, weightOn, marks }: WalkPanel, leg: LegLength): PanelReading[] {
  if (weightOn === null || !SWINGS.has(pose)) return [];
  const side = otherSide(weightOn);
  const toe = markOf(marks.side, limbJoint(side, "toe"));
  const needs = `the ${side} toe marked in the side view`;
  if (leg.kind === "cannot-tell") return [{ id: "toe-height", side, answer: leg }];
  const answer: Answer =
    toe === null
      ? { kind: "cannot-tell", needs }
      : answerOf((PANEL.groundY - toe.y) / leg.value, toe.precision / leg.value, "leg", needs);
  return [{ id: "toe-height", side, answer }];
}

const SWINGS: ReadonlySet<WalkPanel["pose"]> = new Set(["down", "passing", "up"]);
