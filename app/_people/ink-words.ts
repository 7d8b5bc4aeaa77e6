import type { Role } from "../../shared/role";
import type { InkState, ShutCause } from "../_room";
import { people } from "../_words";

export interface StateWords {
  readonly words: string;
  readonly why: string;
}

/**
 * Someone who only looks has no ink to be told about while all is well.
 *
 * @param unsaved the door was shut before the hub had everything
 */
export function stateWords(
  state: InkState,
  role: Role,
  shutBy: ShutCause | null = null,
  unsaved = false,
): StateWords {
  const allWell = state === "saved" || state === "saving" || state === "in-hand";
  if (allWell && (role === "view" || role === "critique")) return people.looksOnly[role];
  const said = saying(state, shutBy);
  if (state !== "shut" || !unsaved) return said;
  return { words: people.shutUnsaved.words(said.words), why: people.shutUnsaved.why(said.why) };
}

/** States in which ink is at risk, or would be if more were drawn. */
const AT_RISK: ReadonlySet<InkState> = new Set([
  ...(["not-saved", "kept", "unwritten", "unwritten-kept", "offline", "refused", "shut"] as const),
]);

/** On the way from one state to another, or with a pen down: what was last told of still holds. */
export function isPassing(state: InkState): boolean {
  return PASSING.has(state);
}

const PASSING: ReadonlySet<InkState> = new Set([
  ...(["opening", "saving", "in-hand", "in-hand-unsaved"] as const),
]);

/**
 * What is said aloud when the state changes: only the way into and out of trouble. "Saving" and
 * "saved" alternate at every stroke, and saying so would talk over the work. `null` says nothing.
 */
export function spokenChange(
  before: InkState,
  now: InkState,
  shutBy: ShutCause | null = null,
): string | null {
  if (before === now) return null;
  if (AT_RISK.has(now)) return `${people.heard.lost} ${saying(now, shutBy).words}`;
  if (AT_RISK.has(before) && now === "saved") {
    const back =
      before === "unwritten" || before === "unwritten-kept"
        ? people.heard.written
        : people.heard.back;
    return `${back} ${people.state.saved.words}`;
  }
  return null;
}

function saying(state: InkState, shutBy: ShutCause | null): StateWords {
  return state === "shut" ? people.shut[shutBy ?? "gone"] : people.state[state];
}
