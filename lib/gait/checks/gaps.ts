import { byPattern } from "../by-pattern";
import type { CannotTell, Finding } from "../finding";
import { isQuiet } from "../quiet";
import type { Check } from "../study";
import { TIME_TRAITS } from "../traits/time-traits";
import { sidesGap } from "./sides-gap";
import { passingShare, spacing } from "./step-gaps";

/**
 * Are the poses where the yardstick expects them in time, and do the two steps of a stride take
 * the same time?
 *
 * Shapes:  one answer a step, and one a stride
 * Units:   frames of the sheet; shares of a step
 * Errors:  none; missing poses or contacts answer "cannot-tell"
 * Source:  beside each limit, in `step-gaps` and `sides-gap`
 */
export const gaps: Check = (study): readonly Finding[] => {
  const { kind } = study.walk;
  if (isQuiet(kind, "gaps")) return [];
  if (study.pattern !== null) return byPattern(study, study.pattern, "gaps", TIME_TRAITS);
  if (study.steps.length === 0) return [NO_STEP];
  const inStep = study.common === "trade" ? spacing : passingShare;
  return [...study.inSteps(inStep), ...(isQuiet(kind, "gaps:sides") ? [] : sidesGap(study))];
};

const NO_STEP: CannotTell = {
  kind: "cannot-tell",
  check: "gaps",
  side: null,
  panels: [],
  needs: "a contact and the poses that follow it",
};
