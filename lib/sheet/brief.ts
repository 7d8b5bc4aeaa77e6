import type { Brief } from "./sheet";

/**
 * The plain walk a brief starts from: a brisk one at 24 frames a second on ones.
 * Source: 12 frames a step, Williams, The Animator's Survival Kit (2001); step length 0.78 of a leg, the
 * median of 317 captured steps; 7.5 heads, and a leg of 0.53 of stature (hip height, Drillis & Contini 1966).
 */
export const defaultBrief: Brief = {
  title: "Untitled walk",
  shot: "",
  kind: "plain",
  framesPerSecond: 24,
  exposure: 1,
  framesPerStep: { left: 12, right: 12 },
  stepLength: 0.78,
  travel: "on-the-spot",
  leadIn: false,
  build: { headsTall: 7.5, legShare: 0.53, statureMetres: null },
};
