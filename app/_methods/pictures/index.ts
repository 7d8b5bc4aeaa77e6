import type { ComponentType } from "react";
import type { CheckId } from "../../../lib/gait";
import { ClearancePicture } from "./clearance";
import { FloatPicture } from "./float";
import { FootRollPicture } from "./foot-roll";
import { GapsPicture } from "./gaps";
import { HipOrderPicture } from "./hip-order";
import { HipRangePicture } from "./hip-range";
import { HitchPicture } from "./hitch";
import { KneePicture } from "./knee";
import { LeadInPicture } from "./lead-in";
import { LimbLengthPicture } from "./limb-length";
import { LoopPicture } from "./loop";
import { MissingPosePicture } from "./missing-pose";
import { OppositionPicture } from "./opposition";
import { PoseOrderPicture } from "./pose-order";
import { ReachPicture } from "./reach";
import { SidesPicture } from "./sides";
import { SinkPicture } from "./sink";
import { SlidePicture } from "./slide";
import { SnapPicture } from "./snap";
import { SymmetryPicture } from "./symmetry";
import { TempoPicture } from "./tempo";
import { ViewsPicture } from "./views";
import { WeightFrontPicture } from "./weight-front";
import { WeightSidePicture } from "./weight-side";
import { WidthPicture } from "./width";

/** What each check measures, drawn. */
export const PICTURES: Readonly<Record<CheckId, ComponentType>> = {
  "missing-pose": MissingPosePicture,
  "pose-order": PoseOrderPicture,
  "hip-order": HipOrderPicture,
  "hip-range": HipRangePicture,
  "weight-side": WeightSidePicture,
  "weight-front": WeightFrontPicture,
  slide: SlidePicture,
  float: FloatPicture,
  sink: SinkPicture,
  "foot-roll": FootRollPicture,
  clearance: ClearancePicture,
  "limb-length": LimbLengthPicture,
  reach: ReachPicture,
  knee: KneePicture,
  snap: SnapPicture,
  gaps: GapsPicture,
  symmetry: SymmetryPicture,
  loop: LoopPicture,
  hitch: HitchPicture,
  opposition: OppositionPicture,
  tempo: TempoPicture,
  width: WidthPicture,
  views: ViewsPicture,
  sides: SidesPicture,
  "lead-in": LeadInPicture,
};
