import { leastFrames, planEvenOut, planRetime, type Sheet, type TimePlan } from "../../lib/sheet";
import type { Timing } from "../_workspace";

/** Most frames a step may have, as the sheet keeps them. */
export const MOST_FRAMES = 1000;

/** New frames, or why there are none yet. */
export type Planned =
  | { readonly kind: "plan"; readonly plan: TimePlan }
  | { readonly kind: "too-few"; readonly least: number }
  | { readonly kind: "no-number" };

/** What a proposal would do to the sheet as it stands now. Units: frames. */
export function planTiming(sheet: Sheet, timing: Timing): Planned {
  if (timing.what === "even-out") return { kind: "plan", plan: planEvenOut(sheet, timing.scope) };
  const { tempo } = timing;
  const asked =
    tempo.scope === "strip"
      ? [tempo.framesPerStep.left, tempo.framesPerStep.right]
      : [tempo.frames, tempo.frames];
  if (asked.some((frames) => !Number.isInteger(frames) || frames < 1 || frames > MOST_FRAMES)) {
    return { kind: "no-number" };
  }
  const { left, right } = leastFrames(sheet, tempo.scope);
  const tooFew = [left, right].filter((least, at) => (asked[at] ?? least) < least);
  if (tooFew.length > 0) return { kind: "too-few", least: Math.max(...tooFew) };
  return { kind: "plan", plan: planRetime(sheet, tempo) };
}
