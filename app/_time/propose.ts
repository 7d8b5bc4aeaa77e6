import type { Sheet } from "../../lib/sheet";
import type { Timing } from "../_workspace";

/** What a press of the tray's button or of its key first proposes: the whole strip, as it stands. */
export function propose(what: Timing["what"], { head }: Sheet): Timing {
  if (what === "even-out") return { what, scope: "strip" };
  return { what, tempo: { scope: "strip", framesPerStep: head.framesPerStep } };
}
