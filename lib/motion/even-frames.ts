import { otherSide, type Side } from "../body";
import { requirePositive } from "../require";
import { type Exposure, nearestDrawn } from "./exposure";
import type { Frame } from "./frame";
import type { PoseName } from "./pose";

/** The four poses of a step, in the order the trade draws them. */
export const STEP_POSES = ["contact", "down", "passing", "up"] as const;
export type StepPose = (typeof STEP_POSES)[number];

export function isStepPose(pose: PoseName): pose is StepPose {
  return (STEP_POSES as readonly PoseName[]).includes(pose);
}

/**
 * When the trade puts each pose, as a share of the step from its contact.
 * Source: Williams, The Animator's Survival Kit (2001): frames 1 4 7 10 13 of a 12-frame step.
 */
export const TRADE_SHARES: Readonly<Record<StepPose, number>> = {
  contact: 0,
  down: 0.25,
  passing: 0.5,
  up: 0.75,
};

/** One panel of an even layout. */
export interface EvenFrame {
  readonly frame: Frame;
  readonly pose: Extract<PoseName, StepPose>;
  readonly weightOn: Side;
}

export interface EvenLayout {
  /** The frame of the first contact. */
  readonly from: Frame;
  readonly steps: number;
  readonly startsWith: Side;
  /** Frames from one contact to the next, by the side that starts the step. */
  readonly framesPerStep: { readonly left: number; readonly right: number };
  readonly exposure: Exposure;
}

/**
 * Where the poses of a walk go when they are spread evenly: each step's four at 0, ¼, ½, ¾ of it,
 * on drawn frames, and the contact that ends the last step.
 *
 * Shapes:  4 poses a step and one more
 * Units:   frames, counted from 1
 * Errors:  RangeError unless every number is above 0
 *
 * @example
 * evenFrames({ from: 1, steps: 1, startsWith: "left", framesPerStep: { left: 12, right: 12 }, exposure: 1 })
 *   .map(({ frame }) => frame); // => [1, 4, 7, 10, 13]
 */
export function evenFrames(layout: EvenLayout): readonly EvenFrame[] {
  const { from, steps, startsWith, framesPerStep, exposure } = layout;
  const { left, right } = framesPerStep;
  requirePositive("evenFrames", {
    from,
    steps,
    "frames per left step": left,
    "frames per right step": right,
  });
  const frames: EvenFrame[] = [];
  let contact: number = from;
  let weightOn = startsWith;
  for (let step = 0; step < steps; step += 1) {
    for (const pose of STEP_POSES) {
      const moment = contact + TRADE_SHARES[pose] * framesPerStep[weightOn];
      frames.push({ frame: nearestDrawn(moment, exposure), pose, weightOn });
    }
    contact += framesPerStep[weightOn];
    weightOn = otherSide(weightOn);
  }
  frames.push({ frame: nearestDrawn(contact, exposure), pose: "contact", weightOn });
  return frames;
}
