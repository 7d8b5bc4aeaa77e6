import type { Method } from "../method";
import { floatMethod } from "./float";
import { footRollMethod } from "./foot-roll";
import { gapsMethod } from "./gaps";
import { hipOrderMethod } from "./hip-order";
import { missingPoseMethod } from "./missing-pose";
import { oppositionMethod } from "./opposition";
import { poseOrderMethod } from "./pose-order";
import { sinkMethod } from "./sink";
import { slideMethod } from "./slide";
import { symmetryMethod } from "./symmetry";
import { tempoMethod } from "./tempo";
import { weightFrontMethod } from "./weight-front";
import { weightSideMethod } from "./weight-side";
import { widthMethod } from "./width";

/** How each check measures, in the order of `CHECK_IDS`. A new check adds its own here. */
export const METHODS: readonly Method[] = [
  missingPoseMethod,
  poseOrderMethod,
  hipOrderMethod,
  weightSideMethod,
  weightFrontMethod,
  slideMethod,
  floatMethod,
  sinkMethod,
  footRollMethod,
  gapsMethod,
  symmetryMethod,
  oppositionMethod,
  tempoMethod,
  widthMethod,
];
