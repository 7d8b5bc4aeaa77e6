import {
  type CentreOfMass,
  centreOfMass,
  frontToGround,
  type LegLength,
  limbJoint,
  markOf,
  type Side,
  sideToGround,
} from "../../body";
import type { View } from "../../geometry";
import { rootSumSquare } from "../../geometry";
import { type Answer, answerOf, type NoReading } from "../answer";
import { frontMark } from "../front-mark";
import { REST_HANGS_WITHIN, SHARE_NEEDED } from "../methods/weight-side";
import type { WalkPanel } from "../walk";

/**
 * What the tables of masses differ by on one pose. Leg lengths.
 * Source: de Leva (1996, male) and Dempster (Winter 2009) on one made-up contact pose: 0.9 cm along and 1.9 cm
 * in height, of a 0.9 m leg
 */
const TABLES_DIFFER = { along: 0.01, up: 0.0214 } as const;

const NEEDS = "the head, neck or shoulders, hips, knees, ankles and feet marked";

/** Where a pose's mass is centred in a view: along or across from the panel's middle, and up. Leg lengths. */
export interface MassPlace {
  readonly along: number;
  readonly up: number;
  /** ± of each. */
  readonly plusMinus: { readonly along: number; readonly up: number };
  readonly share: number;
  readonly missing: readonly string[];
}

/**
 * The centre of mass of a pose, a carried load among it.
 *
 * Shapes:  `along` is x from the side and z from the front
 * Units:   leg lengths; ± of the marks, of the tables, and of the parts that are not marked, each of which may
 *          hang a foot's length from the rest
 * Errors:  none; null where less than 85 % of the mass, or no leg length, is marked
 * Source:  de Leva (1996), the mean of women and men
 */
export function massPlace(
  { marks }: WalkPanel,
  view: View,
  leg: LegLength,
  load: number,
): MassPlace | null {
  const mass = centreOfMass(marks[view], { load });
  if (mass === null || leg.kind === "cannot-tell" || mass.share < SHARE_NEEDED) return null;
  const own = rootSumSquare(mass.plusMinus / leg.value, unseen(mass, load));
  const plusMinus = {
    along: rootSumSquare(own, TABLES_DIFFER.along),
    up: rootSumSquare(own, TABLES_DIFFER.up),
  };
  const { share, missing } = mass;
  if (view === "side") {
    const { x, y } = sideToGround(mass, { place: 0, legLength: leg.value });
    return { along: x, up: y, plusMinus, share, missing };
  }
  const { z, y } = frontToGround(mass, leg.value);
  return { along: z, up: y, plusMinus, share, missing };
}

function unseen({ share, missing }: CentreOfMass, load: number): number {
  const lost = 1 - Math.min(1, share) + (missing.includes("load") ? load : 0);
  return lost < 0.001 ? 0 : lost * REST_HANGS_WITHIN; // the tables round to a ten-thousandth
}

/** Height of the centre of mass over the ground line. Leg lengths. */
export function massHeight(
  panel: WalkPanel,
  leg: LegLength,
  load: number,
  mass = massPlace(panel, "side", leg, load),
): Answer {
  if (leg.kind === "cannot-tell") return leg;
  return mass === null ? NO_MASS : answerOf(mass.up, mass.plusMinus.up, "leg", NEEDS);
}

/** How far the centre of mass is ahead of the ankle of the foot that carries. Leg lengths. */
export function massAhead(
  panel: WalkPanel,
  leg: LegLength,
  load: number,
  mass = massPlace(panel, "side", leg, load),
): Answer {
  if (leg.kind === "cannot-tell") return leg;
  const { weightOn } = panel;
  if (weightOn === null) return NO_SIDE;
  const ankle = ankleAlong(panel, weightOn, leg.value);
  if (mass === null) return NO_MASS;
  const needs = `the ${weightOn} ankle marked in the side view`;
  if (ankle === null) return { kind: "cannot-tell", needs };
  const plusMinus = rootSumSquare(mass.plusMinus.along, ankle.plusMinus);
  return answerOf(mass.along - ankle.x, plusMinus, "leg", needs);
}

/**
 * How far the centre of mass lies from the ankle of the foot that carries, seen from ahead: above 0 toward the
 * other foot. Leg lengths.
 */
export function massBeside(panel: WalkPanel, leg: LegLength, load: number): Answer {
  if (leg.kind === "cannot-tell") return leg;
  const { weightOn } = panel;
  if (weightOn === null) return NO_SIDE;
  const mass = massPlace(panel, "front", leg, load);
  if (mass === null) return { kind: "cannot-tell", needs: `${NEEDS} in the front view` };
  const needs = `the ${weightOn} ankle marked in the front view`;
  const ankle = frontMark(panel, limbJoint(weightOn, "ankle"), leg);
  if (ankle === null) return { kind: "cannot-tell", needs };
  const inward = weightOn === "left" ? 1 : -1; // z goes to the walker's right
  const plusMinus = rootSumSquare(mass.plusMinus.along, ankle.plusMinus);
  return answerOf(inward * (mass.along - ankle.z), plusMinus, "leg", needs);
}

function ankleAlong({ marks }: WalkPanel, side: Side, legUnits: number) {
  const ankle = markOf(marks.side, limbJoint(side, "ankle"));
  if (ankle === null) return null;
  const { x } = sideToGround(ankle, { place: 0, legLength: legUnits });
  return { x, plusMinus: ankle.precision / legUnits };
}

const NO_MASS: NoReading = { kind: "cannot-tell", needs: `${NEEDS} in the side view` };
const NO_SIDE: NoReading = { kind: "cannot-tell", needs: "the side that carries the weight" };
