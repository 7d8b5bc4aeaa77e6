import type { PaperPoint } from "./journey-papers";

/** A foot on the side view: where its ankle stands, and how far it is lifted. Panel units. */
export interface FootPlace {
  readonly x: number;
  readonly lift?: number;
}

export interface FigurePose {
  /** How deep the hips are on the page, panel units. */
  readonly hipY: number;
  readonly left: FootPlace;
  readonly right: FootPlace;
}

const GROUND_Y = 1080;
const ANKLE = 40; // panel units over the sole
const THIGH = 215; // panel units, and as much of shank
const HIP_X = 360;

/**
 * The figure's leg, hip joint to sole, panel units: 1.079 × (thigh + shank), from Drillis & Contini
 * (1966): ankle height 0.039 of stature, thigh and shank 0.491.
 */
export const FIGURE_LEG = 1.079 * 2 * THIGH;

/** The joints that the mark tool asks for in the side view, up to the ankles, in its order. */
export const ASKED_FOR = ["hip", "knee", "heel", "toe", "ankle"] as const;

/** Where to tap for a pose: each joint right, then left. Bones keep their length in every pose. */
export function tapsFor(pose: FigurePose): PaperPoint[] {
  const right = legOf(pose.hipY, pose.right);
  const left = legOf(pose.hipY, pose.left);
  return ASKED_FOR.flatMap((joint) => [right[joint], left[joint]]);
}

function legOf(hipY: number, { x, lift = 0 }: FootPlace) {
  const hip = { x: HIP_X, y: hipY };
  const ankle = { x, y: GROUND_Y - ANKLE - lift };
  const sole = GROUND_Y - lift;
  return {
    ...{ hip, ankle },
    knee: kneeBetween(hip, ankle),
    heel: { x: x - 30, y: sole },
    toe: { x: x + 90, y: sole },
  };
}

/** The knee bends forward: to the right, as the figure walks. */
function kneeBetween(hip: PaperPoint, ankle: PaperPoint): PaperPoint {
  const across = ankle.x - hip.x;
  const down = ankle.y - hip.y;
  const apart = Math.hypot(across, down);
  if (apart > 2 * THIGH) throw new RangeError(`a leg of ${2 * THIGH} does not span ${apart}`);
  const bend = Math.sqrt(THIGH ** 2 - (apart / 2) ** 2);
  return {
    x: hip.x + across / 2 + (bend * down) / apart,
    y: hip.y + down / 2 - (bend * across) / apart,
  };
}
