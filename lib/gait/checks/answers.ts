import type { Side } from "../../body";
import type { CannotTell, CheckId, Reading, Sound } from "../finding";
import type { WalkPanel } from "../walk";

/** What an answer is about: its check, whose side, and the panels it was read from. */
export interface About {
  readonly check: CheckId;
  readonly side: Side | null;
  readonly panels: readonly WalkPanel[];
}

/** The check could not be answered; `needs` says what is missing. */
export function cannotTell({ check, side, panels }: About, needs: string): CannotTell {
  return { kind: "cannot-tell", check, side, panels: panels.map(({ id }) => id), needs };
}

/** The check was answered and has nothing to say. */
export function sound({ check, side, panels }: About, measured: Reading | null): Sound {
  return { kind: "sound", check, side, panels: panels.map(({ id }) => id), measured };
}

/** What every check of steps needs where there is none. */
export const NEEDS_A_STEP = "a contact and the poses that follow it";

/** What is needed where nobody said whose step it is. */
export const NEEDS_A_SIDE = "to know whose weight the step carries";
