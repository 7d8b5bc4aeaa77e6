import type { Role } from "../../shared/role";
import type { InkState, ShutCause } from "../_room";
import { people } from "../_words";

export interface StateWords {
  readonly words: string;
  readonly why: string;
}

/** Someone who only looks has no ink to be told about while all is well. */
export function stateWords(
  state: InkState,
  role: Role,
  shutBy: ShutCause | null = null,
): StateWords {
  const allWell = state === "saved" || state === "saving";
  if (allWell && (role === "view" || role === "critique")) return people.looksOnly[role];
  return saying(state, shutBy);
}

/** States in which ink is at risk, or would be if more were drawn. */
const AT_RISK: ReadonlySet<InkState> = new Set([
  ...(["not-saved", "kept", "unwritten", "unwritten-kept", "offline", "refused", "shut"] as const),
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
