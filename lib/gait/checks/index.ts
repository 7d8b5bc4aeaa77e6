import type { Check } from "../study";
import { clearance } from "./clearance";
import { float } from "./float";
import { footRoll } from "./foot-roll";
import { gaps } from "./gaps";
import { hipOrder } from "./hip-order";
import { hitch } from "./hitch";
import { loop } from "./loop";
import { missingPose } from "./missing-pose";
import { opposition } from "./opposition";
import { poseOrder } from "./pose-order";
import { sink } from "./sink";
import { slide } from "./slide";
import { symmetry } from "./symmetry";
import { tempo } from "./tempo";
import { weightFront } from "./weight-front";
import { weightSide } from "./weight-side";
import { width } from "./width";

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
  clearance,
  gaps,
  symmetry,
  loop,
  hitch,
  opposition,
  tempo,
  width,
];
