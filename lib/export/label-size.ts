/** Pixels about a label's words, and the level's sign before a number; its height in the words' own size. */
export const LABEL = { aside: 2, height: 1.18, sign: 13 } as const;
