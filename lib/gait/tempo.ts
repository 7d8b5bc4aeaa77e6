import type { Build } from "../body";
import { requirePositive } from "../require";
import { cadence } from "./cadence";
import { froude } from "./froude";

/** What a brief or a strip says about time and distance. */
export interface Pace {
  readonly framesPerStep: number;
  readonly framesPerSecond: number;
  /** Leg lengths a step. */
  readonly stepLength: number;
  readonly build: Build;
}

/** A tempo read back. What is told in metres is null while the character has no stature. */
export interface Tempo {
  readonly stepsPerMinute: number;
  readonly secondsPerStep: number;
  readonly legsPerSecond: number;
  readonly metresPerSecond: number | null;
  readonly froude: number | null;
  /** How it reads, by the trade's table: "brisk, businesslike". */
  readonly reads: string;
}

/** Frames per step at 24 a second, and how a walk at that pace reads. */
const PACES: readonly { readonly frames: number; readonly reads: string }[] = [
  // Source: Williams, The Animator's Survival Kit (2001), walks. Our wording.
  { frames: 4, reads: "a very fast run" },
  { frames: 6, reads: "a run, or a very fast walk" },
  { frames: 8, reads: "a slow run, or a cartoon walk" },
  { frames: 12, reads: "brisk, businesslike" },
  { frames: 16, reads: "strolling, leisurely" },
  { frames: 20, reads: "elderly or tired" },
  { frames: 24, reads: "slow steps" },
  { frames: 32, reads: "exhausted, on the way home" },
];
const TABLE_FRAMES_PER_SECOND = 24;

/**
 * The tempo of a walk, in words and units.
 *
 * Units:   see `Pace` and `Tempo`
 * Errors:  RangeError unless frames, rate and step length are finite and above zero
 */
export function tempo({ framesPerStep, framesPerSecond, stepLength, build }: Pace): Tempo {
  requirePositive("tempo", { framesPerStep, framesPerSecond, stepLength });
  const secondsPerStep = framesPerStep / framesPerSecond;
  const legsPerSecond = stepLength / secondsPerStep;
  const legMetres = build.statureMetres === null ? null : build.statureMetres * build.legShare;
  const metresPerSecond = legMetres === null ? null : legsPerSecond * legMetres;
  return {
    stepsPerMinute: cadence(framesPerStep, framesPerSecond),
    secondsPerStep,
    legsPerSecond,
    metresPerSecond,
    froude:
      metresPerSecond === null || legMetres === null ? null : froude(metresPerSecond, legMetres),
    reads: paceInWords(secondsPerStep),
  };
}

/** The row of the table nearest in proportion: 10 frames lie nearer to 12 than to 8. */
function paceInWords(secondsPerStep: number): string {
  const frames = secondsPerStep * TABLE_FRAMES_PER_SECOND;
  const awayFrom = (row: { readonly frames: number }) => Math.abs(Math.log(frames / row.frames));
  return PACES.reduce((best, row) => (awayFrom(row) < awayFrom(best) ? row : best)).reads;
}
