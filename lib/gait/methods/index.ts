import type { Method } from "../method";
import { clearanceMethod } from "./clearance";
import { floatMethod } from "./float";
import { footRollMethod } from "./foot-roll";
import { gapsMethod } from "./gaps";
import { hipOrderMethod } from "./hip-order";
import { hipRangeMethod } from "./hip-range";
import { hitchMethod } from "./hitch";
import { kneeMethod } from "./knee";
import { leadInMethod } from "./lead-in";
import { limbLengthMethod } from "./limb-length";
import { loopMethod } from "./loop";
import { missingPoseMethod } from "./missing-pose";
import { oppositionMethod } from "./opposition";
import { poseOrderMethod } from "./pose-order";
import { reachMethod } from "./reach";
import { sidesMethod } from "./sides";
import { sinkMethod } from "./sink";
import { slideMethod } from "./slide";
import { snapMethod } from "./snap";
import { symmetryMethod } from "./symmetry";
import { tempoMethod } from "./tempo";
import { viewsMethod } from "./views";
import { weightFrontMethod } from "./weight-front";
import { weightSideMethod } from "./weight-side";
import { widthMethod } from "./width";

/** How each check measures, in the order of `CHECK_IDS`. A new check adds its own here. */
export const METHODS: readonly Method[] = [
  missingPoseMethod,
  poseOrderMethod,
  hipOrderMethod,
  hipRangeMethod,
  weightSideMethod,
  weightFrontMethod,
  slideMethod,
  floatMethod,
  sinkMethod,
  footRollMethod,
  clearanceMethod,
  limbLengthMethod,
  reachMethod,
  kneeMethod,
  snapMethod,
  gapsMethod,
  symmetryMethod,
  loopMethod,
  hitchMethod,
  oppositionMethod,
  tempoMethod,
  widthMethod,
  viewsMethod,
  sidesMethod,
  leadInMethod,
];
