import { type Tempo, tempo, type Yardstick } from "../gait";
import type { SheetHead } from "../sheet";

/**
 * The walk's tempo as a person reads it: "24 frames a second, on ones · 12 frames a step, 0.50 s,
 * brisk, businesslike · step 0.78 leg lengths, 1.56 a second". Metres only where the character has
 * a height.
 */
export function tempoWords(head: SheetHead): string {
  const { framesPerSecond, framesPerStep, stepLength, build, exposure } = head;
  const { left, right } = framesPerStep;
  const read = tempo({ framesPerStep: (left + right) / 2, framesPerSecond, stepLength, build });
  const frames =
    left === right ? `${left} frames a step` : `${left} frames the left step, ${right} the right`;
  return [
    `${framesPerSecond} frames a second, on ${exposure === 1 ? "ones" : "twos"}`,
    `${frames}, ${read.secondsPerStep.toFixed(2)} s: ${read.reads}`,
    `step ${stepLength.toFixed(2)} leg lengths, ${speedWords(read)}`,
  ].join(" · ");
}

function speedWords({ legsPerSecond, metresPerSecond }: Tempo): string {
  const legs = `${legsPerSecond.toFixed(2)} a second`;
  return metresPerSecond === null ? legs : `${legs}, ${metresPerSecond.toFixed(2)} m/s`;
}

const KIND_WORDS: Readonly<Record<SheetHead["kind"], string>> = {
  plain: "plain walk",
  heavy: "heavy walk",
  limp: "limp",
  sneak: "sneak",
  child: "child's walk",
  "double-bounce": "double bounce",
  march: "march",
  free: "free walk",
};

const YARDSTICK_WORDS: Readonly<Record<Yardstick, string>> = {
  trade: "held against the trade's handbooks",
  life: "held against captured walks (life)",
  "this-walk": "held against this walk's own step",
  version: "held against another walk",
};

/** A yardstick as a person reads it. */
export const YARDSTICK_NAMES: Readonly<Record<Yardstick, string>> = {
  trade: "trade",
  life: "life",
  "this-walk": "this walk",
  version: "a version",
};

/** What the sheet is and how it is read: "Plain walk on the spot · yardstick trade: …". */
export function natureWords(head: SheetHead, yardstick: Yardstick): string {
  const kind = KIND_WORDS[head.kind];
  const travel = head.travel === "on-the-spot" ? "on the spot" : "travelling";
  const walk = `${kind.charAt(0).toUpperCase()}${kind.slice(1)}, ${travel}`;
  return `${walk} · Yardstick ${YARDSTICK_NAMES[yardstick]}: ${YARDSTICK_WORDS[yardstick]}`;
}

/** The walk's name, or that it has none. */
export function titleWords({ title }: Pick<SheetHead, "title">): string {
  return title.trim() === "" ? "Untitled walk" : title.trim();
}
