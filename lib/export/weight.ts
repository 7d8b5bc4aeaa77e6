/** The weights of the family that are shipped. */
export const WEIGHTS = [400, 600, 700] as const;
export type Weight = (typeof WEIGHTS)[number];
