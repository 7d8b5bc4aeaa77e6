import { requirePositive } from "../../require";
import type { Build } from "../build";
import { ALONG_FOOT, HALF_WIDTH, STATURE } from "./proportions";

/** How long a figure's parts are. Units: leg lengths, hip joint to sole. */
export interface FigureSize {
  readonly thigh: number;
  readonly shank: number;
  /** A flat foot about its ankle: how high that stands, and how far ahead of it the others lie. */
  readonly foot: {
    readonly ankle: number;
    readonly heel: number;
    readonly ball: number;
    readonly toe: number;
  };
  /** From the middle between the hips up to the middle between the shoulders, and up to the neck. */
  readonly shoulders: number;
  readonly neck: number;
  /** From the neck's mark to the head's. */
  readonly head: number;
  readonly upperArm: number;
  readonly forearm: number;
  /** Half the distance between the two of a pair, across the walk. */
  readonly half: { readonly hips: number; readonly shoulders: number; readonly feet: number };
}

/**
 * The least that a trunk may take of stature, so that a huge head on long legs still has a body under
 * it: our own choice.
 */
const LEAST_TRUNK = 0.1;

/**
 * A figure's sizes from its build alone: the leg in the published proportions of a leg, the head by
 * its height, the trunk what is left between them, the arms in the published proportion to the trunk.
 *
 * Units:   shares and head heights → leg lengths
 * Errors:  RangeError unless heads and leg share are above 0
 * Source:  Drillis & Contini (1966), see `STATURE`; what goes with what is our own choice
 *
 * @example
 * const { thigh, shank, foot } = figureSizeOf({ headsTall: 7.7, legShare: 0.53, statureMetres: null });
 * thigh + shank + foot.ankle; // => 1.00
 */
export function figureSizeOf({ headsTall, legShare }: Build): FigureSize {
  requirePositive("figureSizeOf", { headsTall, legShare });
  const ofLeg = (share: number) => share / STATURE.hip;
  const length = ofLeg(STATURE.foot);
  const head = 1 / headsTall; // from here on shares of stature
  const trunk = Math.max(LEAST_TRUNK, 1 - legShare - head);
  const shoulders = ((STATURE.shoulder - STATURE.hip) / (STATURE.chin - STATURE.hip)) * trunk;
  const arm = shoulders / (STATURE.shoulder - STATURE.hip);
  return {
    thigh: ofLeg(STATURE.thigh),
    shank: ofLeg(STATURE.shank),
    foot: {
      ankle: ofLeg(STATURE.ankle),
      heel: -ALONG_FOOT.ankle * length,
      ball: (ALONG_FOOT.ball - ALONG_FOOT.ankle) * length,
      toe: (ALONG_FOOT.toe - ALONG_FOOT.ankle) * length,
    },
    shoulders: shoulders / legShare,
    neck: trunk / legShare,
    head: (head * (STATURE.eye - STATURE.chin)) / STATURE.head / legShare,
    upperArm: (arm * STATURE.upperArm) / legShare,
    forearm: (arm * STATURE.forearm) / legShare,
    half: HALF_WIDTH,
  };
}
