/**
 * A standing adult, as shares of stature.
 * Source: heights above the floor, segment lengths and head: Drillis & Contini (1966), Body Segment
 * Parameters, NYU Tech. Rep. 1166-03, as drawn in Winter (2009), fig. 4.1. A neck's mark is put at the
 * chin, a head's at the eye.
 */
export const STATURE = {
  eye: 0.936,
  chin: 0.87,
  shoulder: 0.818,
  hip: 0.53,
  ankle: 0.039,
  thigh: 0.245,
  shank: 0.246,
  foot: 0.152,
  upperArm: 0.186,
  forearm: 0.146,
  head: 0.13,
} as const;

/** Our own choice, shares of the foot's length from the heel: where ankle and ball look right. */
export const ALONG_FOOT = { ankle: 0.25, ball: 0.7, toe: 1 } as const;

/**
 * Half the distance between the two joints of a pair and between the two feet's tracks, leg lengths.
 * Source: medians of 28 steps of six captured walks (CMU database, clips 05_01 07_01 16_15 16_22 35_08
 * 39_01): hips 0.098, shoulders 0.201, ankles across the walk 0.055. The published breadths are those
 * of the body's outline and are no distances of joints.
 */
export const HALF_WIDTH = { hips: 0.098, shoulders: 0.201, feet: 0.055 } as const;
