/**
 * What a walk is started from when the brief says nothing, and the ranges a brief may ask for.
 * Plain values: the start page shows them without loading the parser.
 */

export const BRIEF_KINDS = [
  "plain",
  "heavy",
  "limp",
  "sneak",
  "child",
  "double-bounce",
  "march",
  "free",
] as const;
export const BRIEF_TRAVELS = ["on-the-spot", "travelling"] as const;
export const BRIEF_EXPOSURES = [1, 2] as const;

/** Each end included. Frames are whole, the fewest a step as drawn on ones; step length in leg lengths; stature in metres. */
export const BRIEF_RANGES = {
  titleLength: { min: 1, max: 120 },
  shotLength: { min: 0, max: 60 },
  framesPerSecond: { min: 1, max: 240 },
  framesPerStep: { min: 4, max: 240 },
  stepLength: { min: 0.05, max: 2.5 },
  headsTall: { min: 1.5, max: 12 },
  legShare: { min: 0.15, max: 0.75 },
  statureMetres: { min: 0.05, max: 100 },
} as const;

/**
 * The fewest frames a step may have: a drawn frame for each of its four poses. With fewer on twos two
 * poses would share one.
 */
export function leastFramesPerStep(exposure: (typeof BRIEF_EXPOSURES)[number]): number {
  return BRIEF_RANGES.framesPerStep.min * exposure;
}

/** A brief as it is once every default is filled in. */
export interface BriefValues {
  readonly title: string;
  readonly shot: string;
  readonly kind: (typeof BRIEF_KINDS)[number];
  readonly framesPerSecond: number;
  readonly exposure: (typeof BRIEF_EXPOSURES)[number];
  readonly framesPerStep: { readonly left: number; readonly right: number };
  /** Leg lengths. */
  readonly stepLength: number;
  readonly travel: (typeof BRIEF_TRAVELS)[number];
  readonly leadIn: boolean;
  readonly build: {
    readonly headsTall: number;
    readonly legShare: number;
    readonly statureMetres: number | null;
  };
}

export const BRIEF_DEFAULTS: BriefValues = {
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
