import { type JointName, PANEL } from "../../lib/body";
import type { Point, View } from "../../lib/geometry";

/**
 * Shares of stature. Heights above the floor, the foot's length and the breadths: Drillis & Contini
 * (1966), as drawn in Winter (2009), fig. 4.1. A neck's mark is put at the chin, a head's at the eye.
 */
const HEIGHT = {
  head: 0.936,
  neck: 0.87,
  shoulder: 0.818,
  elbow: 0.63,
  hip: 0.53,
  wrist: 0.485,
  knee: 0.285,
  ankle: 0.039,
  foot: 0,
} as const;
const FOOT_LENGTH = 0.152;
const BREADTH = { hip: 0.191, shoulder: 0.259 } as const;

/** Our own choice, shares of the foot's length from the heel: where ankle and ball look right. */
const ALONG_FOOT = { heel: 0, ankle: 0.25, ball: 0.7, toe: 1 } as const;
/** Our own choice: seen from ahead the feet point out a little, or a toe would hide its heel. */
const TOE_OUT = Math.PI / 25;
/** Our own choice: a far limb is drawn a little aside of the near one, so that both can be taken hold of. */
const FAR_ASIDE = 0.02;

const STATURE = PANEL.plainLeg / HEIGHT.hip; // panel units

/**
 * Where a joint is on a plain figure that stands in the middle of the paper: a mark's first place
 * when there is no neighbour to take it from.
 *
 * Units:   panel units, y down
 */
export function standingPlace(joint: JointName, view: View): Point {
  const [side, part] = parts(joint);
  const aside = view === "side" ? alongWalk(side, part) : acrossWalk(side, part);
  return {
    x: PANEL.width / 2 + aside * STATURE,
    y: PANEL.groundY - heightOf(part) * STATURE,
  };
}

function parts(joint: JointName): readonly [side: "left" | "right" | null, part: string] {
  if (joint.startsWith("left-")) return ["left", joint.slice("left-".length)];
  if (joint.startsWith("right-")) return ["right", joint.slice("right-".length)];
  return [null, joint];
}

function heightOf(part: string): number {
  if (part === "load") return HEIGHT.elbow;
  return part in HEIGHT ? HEIGHT[part as keyof typeof HEIGHT] : HEIGHT.foot;
}

/** Side view: he goes to the page's right; hip and ankle in one plumb line. Shares of stature. */
function alongWalk(side: "left" | "right" | null, part: string): number {
  if (part === "load") return -BREADTH.shoulder / 2;
  return (side === "left" ? FAR_ASIDE : 0) + alongFoot(part);
}

/** Front view: he comes toward us, so his left is on the page's right. Shares of stature. */
function acrossWalk(side: "left" | "right" | null, part: string): number {
  if (side === null) return 0;
  const arm = part === "shoulder" || part === "elbow" || part === "wrist";
  const out = (arm ? BREADTH.shoulder : BREADTH.hip) / 2 + alongFoot(part) * Math.sin(TOE_OUT);
  return side === "left" ? out : -out;
}

/** How far ahead of the ankle a part of the foot is; 0 for all else. Shares of stature. */
function alongFoot(part: string): number {
  if (!(part in ALONG_FOOT)) return 0;
  return (ALONG_FOOT[part as keyof typeof ALONG_FOOT] - ALONG_FOOT.ankle) * FOOT_LENGTH;
}
