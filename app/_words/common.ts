import type { Side } from "../../lib/body";
import type { View } from "../../lib/geometry";
import type { PoseName } from "../../lib/motion";

/** Words that more than one part of the page uses. */
export const common = {
  close: "Close",
  cancel: "Cancel",
  side: { left: "left", right: "right" } satisfies Record<Side, string>,
  view: { side: "side", front: "front" } satisfies Record<View, string>,
  pose: {
    stand: "stand",
    "lead-in": "lead-in",
    contact: "contact",
    down: "down",
    passing: "passing",
    up: "up",
    breakdown: "breakdown",
  } satisfies Record<PoseName, string>,
  /** How the walk is drawn, by its exposure. */
  drawn: { 1: "on ones", 2: "on twos" },
  frame: (frame: number) => `frame ${frame}`,
} as const;
