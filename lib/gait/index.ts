export type { Answer, NoReading, Value } from "./answer";
export { applyFix } from "./apply-fix";
export { ARC_NAMES, type ArcName } from "./arc-path";
export { cadence } from "./cadence";
export { compassRise } from "./compass-rise";
export { FIGURE_PRECISION, type PlacedFigure, placedFigure } from "./figure/placed-figure";
export {
  type CannotTell,
  CHECK_IDS,
  type CheckId,
  type Finding,
  type Level,
  type Reading,
  type Remark,
  type Sound,
  type Spot,
  SUBJECTS,
  type Subject,
  UNITS,
  type Unit,
} from "./finding";
export type { Fix, FixChange, MovedMark } from "./fix";
export { fixFor, hasFix } from "./fix-for";
export { bearingFeet } from "./foot";
export { FOOT_STATES, type FootState, type FootTold } from "./foot-state";
export type { FootSpan } from "./footfalls";
export { froude } from "./froude";
export type { GapCell } from "./gap-row";
export { groundMark, placeOf } from "./ground-mark";
export { GUESS_PRECISION, type GuessedMarks, guessedMarks } from "./guess/guessed-marks";
export { type Bearing, SNAPS_WITHIN, snapToGround } from "./guess/snap-to-ground";
export { type Harmonics, harmonics } from "./harmonics";
export type { BandPoint, HipBand, HipCurve, HipPoint } from "./hip-curve";
export { type HipHeight, hipHeight } from "./hip-height";
export type { Change, Kept, Lapsed } from "./keep-on-purpose";
export type { Method, MethodLimit } from "./method";
export { METHODS } from "./methods";
export {
  type KeptSide,
  measuredIn,
  type OnPurpose,
  type OnPurposeScope,
  purposeOf,
  type ScopeKind,
} from "./on-purpose";
export {
  PANEL_READING_IDS,
  type PanelReading,
  type PanelReadingId,
  panelReadings,
  type YesNo,
} from "./panel-readings";
export type { Against } from "./pattern";
export { type GroundPace, type Place, placesOf } from "./places/places-of";
export {
  type SwitchedPanel,
  switchedTravel,
  type TravelSwitch,
  withTravel,
} from "./places/switched-travel";
export { POSE_SHARES } from "./pose-shares";
export { type Quieted, type QuietTopic, quietedIn } from "./quiet";
export type { ArcReading, ArcReadings } from "./readings/arcs";
export { baseLength, baseWidth } from "./readings/base-of-support";
export {
  ankleBend,
  elbowBend,
  footPitch,
  hipBend,
  kneeBend,
  pelvisTilt,
  shoulderTilt,
  trunkLean,
} from "./readings/joint-angles";
export { massAhead, massHeight } from "./readings/mass-readings";
export { type Review, reviewWalk } from "./review-walk";
export type { GroundMark } from "./seen-mark";
export { stanceOf } from "./stance";
export { findSteps, type Step } from "./step";
export type { StepReading } from "./step-readings";
export type { StrideReading, Symmetry } from "./stride-readings";
export { symmetryAngle } from "./symmetry-angle";
export { symmetryIndex } from "./symmetry-index";
export { type Pace, type Tempo, tempo } from "./tempo";
export { toldAs } from "./told-as";
export { type FixOf, findingCauses, type ToldTogether, toldTogether } from "./told-together";
export {
  COMMON_YARDSTICKS,
  type CommonYardstick,
  type Ground,
  KINDS,
  SHEET_YARDSTICKS,
  type SheetYardstick,
  type Travel,
  type Walk,
  type WalkKind,
  type WalkPanel,
  YARDSTICKS,
  type Yardstick,
} from "./walk";
export { walkLegLength } from "./walk-leg";
export { type WalkMotion, walkMotion } from "./walk-motion";
export { walkRatio } from "./walk-ratio";
