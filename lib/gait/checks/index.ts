import type { Check } from "../study";
import { float } from "./float";
import { footRoll } from "./foot-roll";
import { gaps } from "./gaps";
import { hipOrder } from "./hip-order";
import { missingPose } from "./missing-pose";
import { poseOrder } from "./pose-order";
import { sink } from "./sink";
import { slide } from "./slide";
import { symmetry } from "./symmetry";
import { weightFront } from "./weight-front";
import { weightSide } from "./weight-side";

/** Every check there is. A new one is added here, and to `CheckId`. */
export const CHECKS: readonly Check[] = [
  missingPose,
  poseOrder,
  hipOrder,
  weightSide,
  weightFront,
  slide,
  float,
  sink,
  footRoll,
  gaps,
  symmetry,
];
