import type { LineState } from "./document-line";

/**
 * What may truthfully be said about the ink:
 * - `opening`: the first exchange is under way
 * - `saved`: everything drawn here is committed on the hub's disk
 * - `saving`: handed over, the hub has not said so yet
 * - `not-saved`: drawn here, and not handed over; leaving now would lose it
 * - `unwritten`: handed over, and the hub cannot write it: its disk is full, or fails
 * - `offline`: nothing is waiting, but nothing new would be saved either
 * - `refused`: the hub would not take it
 * - `shut`: the hub closed the door for good
 */
export type InkState =
  | "opening"
  | "saved"
  | "saving"
  | "not-saved"
  | "unwritten"
  | "offline"
  | "refused"
  | "shut";

const WORST_FIRST: readonly InkState[] = [
  "shut",
  "refused",
  "not-saved",
  "unwritten",
  "offline",
  "opening",
  "saving",
  "saved",
];

/** One document's word on its ink. */
export function inkStateOf(line: LineState, everSynced: boolean): InkState {
  if (line.closed !== null) return "shut";
  if (line.refused !== null) return "refused";
  if (!line.connected) {
    if (line.unsent) return "not-saved";
    return everSynced ? "offline" : "opening";
  }
  if (line.storage === "failing" || line.storage === "full") {
    if (line.unsent) return "not-saved";
    return line.sent > line.saved ? "unwritten" : "saved";
  }
  if (line.unsent && !line.synced) return "not-saved";
  // A line that came back may have handed over ink in its first answer.
  if (!line.synced) return everSynced && line.sent > line.saved ? "saving" : "opening";
  return line.sent > line.saved || line.unsent ? "saving" : "saved";
}

/**
 * Both documents are one sheet to the person who draws: the worse word counts. Where one line has
 * fallen silent and the other has not yet been answered, `offline` would call everything saved.
 */
export function worseInkState(one: InkState, other: InkState): InkState {
  const both = [one, other];
  const waiting = both.includes("saving") || both.includes("unwritten");
  if (both.includes("offline") && waiting) return "not-saved";
  return WORST_FIRST.indexOf(one) <= WORST_FIRST.indexOf(other) ? one : other;
}

/** Would leaving the page now lose ink that was drawn here? */
export function losesInk(line: LineState, everSynced: boolean): boolean {
  switch (inkStateOf(line, everSynced)) {
    case "saving":
    case "unwritten":
    case "not-saved":
    case "refused":
      return true;
    case "shut":
      return line.unsent || line.sent > line.saved;
    default:
      return false;
  }
}

/** Can what is drawn from now on still be saved? Ink that never can be must not be drawn at all. */
export function takesInk(state: InkState): boolean {
  return state !== "shut" && state !== "refused";
}
