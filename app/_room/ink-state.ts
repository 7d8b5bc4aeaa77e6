import type { LineState } from "./document-line";

/**
 * What may truthfully be said about the ink:
 * - `opening`: the first exchange is under way
 * - `saved`: everything drawn here is committed on the hub's disk
 * - `in-hand`: the same, but for what is under a pen just now
 * - `saving`: handed over, the hub has not said so yet
 * - `not-saved`: drawn here, not handed over, and not kept on this machine; leaving now would lose it
 * - `kept`: drawn here, not handed over, and on this machine's disk
 * - `unwritten`: handed over, and the hub cannot write it: its disk is full, or fails
 * - `unwritten-kept`: the same, and it is on this machine's disk
 * - `offline`: nothing is waiting, but nothing new would be saved either
 * - `in-hand-unsaved`: `kept`, `unwritten-kept` or `offline`, but for what is under a pen just now
 * - `refused`: the hub would not take it
 * - `shut`: the hub closed the door for good
 */
export type InkState =
  | "opening"
  | "saved"
  | "in-hand"
  | "saving"
  | "not-saved"
  | "kept"
  | "unwritten"
  | "unwritten-kept"
  | "offline"
  | "in-hand-unsaved"
  | "refused"
  | "shut";

const WORST_FIRST: readonly InkState[] = [
  "shut",
  "refused",
  "not-saved",
  "unwritten",
  "unwritten-kept",
  "kept",
  "offline",
  "opening",
  "saving",
  "saved",
];

/** What is under a pen is in this tab alone: while it is, no word may promise more. */
const UNDER_A_PEN: { readonly [State in InkState]?: InkState } = {
  saved: "in-hand",
  offline: "in-hand-unsaved",
  kept: "in-hand-unsaved",
  "unwritten-kept": "in-hand-unsaved",
};

/** One document's word on its ink. */
export function inkStateOf(line: LineState, everSynced: boolean): InkState {
  if (line.closed !== null) return "shut";
  if (line.refused !== null || line.outdated) return "refused";
  const handedOver = line.connected && !line.unsent;
  if (line.waiting > 0 && !handedOver) return line.kept ? "kept" : "not-saved";
  if (!line.connected) return everSynced ? "offline" : "opening";
  if (line.waiting > 0 && (line.storage === "failing" || line.storage === "full")) {
    return line.kept ? "unwritten-kept" : "unwritten";
  }
  if (line.waiting > 0 || (line.synced && line.sent > line.saved)) return "saving";
  return line.synced ? "saved" : "opening";
}

export interface SheetInk {
  /** The sheet was here once. */
  readonly everSynced: boolean;
  /** Work lies in the drawer that the sheet would not take. */
  readonly lost: boolean;
  /** A pen is down. */
  readonly inHand: boolean;
}

/**
 * Both documents are one sheet to the person who draws: the worse word counts. Where one line has
 * fallen silent and the other has not yet been answered, `offline` would call everything saved.
 */
export function sheetInkState(lines: readonly LineState[], sheet: SheetInk): InkState {
  const state = setDown(lines, sheet);
  return (sheet.inHand ? UNDER_A_PEN[state] : undefined) ?? state;
}

/** The word on all that was set down. */
function setDown(lines: readonly LineState[], { everSynced, lost }: SheetInk): InkState {
  const states = lines.map((line) => inkStateOf(line, everSynced));
  const worst = WORST_FIRST.find((state) => states.includes(state)) ?? "opening";
  if (worst === "shut") return worst;
  if (lost) return "refused";
  if (worst !== "offline" || lines.every(({ waiting }) => waiting === 0)) return worst;
  return lines.every(({ kept }) => kept) ? "kept" : "not-saved";
}

/** Would leaving the page now leave work behind that the hub has not saved? */
export function leavesUnsaved({ waiting }: LineState): boolean {
  return waiting > 0;
}

/** Is what is drawn from now on worth drawing? Where the door is shut it never would be saved. */
export function takesInk(state: InkState): boolean {
  return state !== "shut";
}
