import { z } from "zod";
import {
  BRIEF_DEFAULTS,
  BRIEF_EXPOSURES,
  BRIEF_KINDS,
  BRIEF_RANGES,
  BRIEF_TRAVELS,
  type BriefValues,
  leastFramesPerStep,
} from "./brief-defaults";
import { expecting, number, oneOf, text, wholeNumber } from "./expecting";

const RANGES = BRIEF_RANGES;

const FramesPerStep = z
  .union(
    [
      wholeNumber(RANGES.framesPerStep),
      z.strictObject({
        left: wholeNumber(RANGES.framesPerStep),
        right: wholeNumber(RANGES.framesPerStep),
      }),
    ],
    expecting(
      `a whole number in ${RANGES.framesPerStep.min}..${RANGES.framesPerStep.max}, or { left, right } of two such`,
    ),
  )
  .transform((value) => (typeof value === "number" ? { left: value, right: value } : value));

const Build = z.strictObject({
  headsTall: number(RANGES.headsTall).default(BRIEF_DEFAULTS.build.headsTall),
  legShare: number(RANGES.legShare).default(BRIEF_DEFAULTS.build.legShare),
  statureMetres: number(RANGES.statureMetres).nullable().default(null),
});

const Fields = z.strictObject({
  title: text(RANGES.titleLength).default(BRIEF_DEFAULTS.title),
  shot: text(RANGES.shotLength).default(BRIEF_DEFAULTS.shot),
  kind: oneOf(BRIEF_KINDS).default(BRIEF_DEFAULTS.kind),
  framesPerSecond: number(RANGES.framesPerSecond).default(BRIEF_DEFAULTS.framesPerSecond),
  exposure: oneOf(BRIEF_EXPOSURES).default(BRIEF_DEFAULTS.exposure),
  framesPerStep: FramesPerStep.default(BRIEF_DEFAULTS.framesPerStep),
  stepLength: number(RANGES.stepLength).default(BRIEF_DEFAULTS.stepLength),
  travel: oneOf(BRIEF_TRAVELS).default(BRIEF_DEFAULTS.travel),
  leadIn: z.boolean(expecting("true or false")).default(BRIEF_DEFAULTS.leadIn),
  build: Build.default(BRIEF_DEFAULTS.build),
});

/**
 * The brief of a new walk, as a request or a form gives it. A field that is not there takes its
 * default; a field that is not known is refused, for it is more often a slip than a wish.
 *
 * Units:   frames, leg lengths, heads, metres, as the names say
 */
export const Brief = Fields.superRefine(({ exposure, framesPerStep }, context) => {
  const least = leastFramesPerStep(exposure);
  for (const side of ["left", "right"] as const) {
    const frames = framesPerStep[side];
    if (frames >= least) continue;
    const message = `needs at least ${least} on twos, a drawn frame for each of its four poses, got ${frames}`;
    context.addIssue({ code: "custom", path: ["framesPerStep", side], message });
  }
}) satisfies z.ZodType<BriefValues>;
