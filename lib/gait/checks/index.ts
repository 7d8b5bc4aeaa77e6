import type { Check } from "../study";
import { clearance } from "./clearance";
import { float } from "./float";
import { footRoll } from "./foot-roll";
import { gaps } from "./gaps";
import { hipOrder } from "./hip-order";
import { hipRange } from "./hip-range";
import { hitch } from "./hitch";
import { knee } from "./knee";
import { leadIn } from "./lead-in";
import { limbLength } from "./limb-length";
import { loop } from "./loop";
import { missingPose } from "./missing-pose";
import { opposition } from "./opposition";
import { poseOrder } from "./pose-order";
import { reach } from "./reach";
import { sides } from "./sides";
import { sink } from "./sink";
import { slide } from "./slide";
import { snap } from "./snap";
import { symmetry } from "./symmetry";
import { tempo } from "./tempo";
import { views } from "./views";
import { weightFront } from "./weight-front";
import { weightSide } from "./weight-side";
import { width } from "./width";

/** Every check there is. A new one is added here, and to `CheckId`. */
export const CHECKS: readonly Check[] = [
  missingPose,
  poseOrder,
  hipOrder,
  hipRange,
  weightSide,
  weightFront,
  slide,
  float,
  sink,
  footRoll,
  clearance,
  limbLength,
  reach,
  knee,
  snap,
  gaps,
  symmetry,
  loop,
  hitch,
  opposition,
  tempo,
  width,
  views,
  sides,
  leadIn,
];
