import { otherSide, type Side } from "../../lib/body";
import type { Frame, PoseName } from "../../lib/motion";
import type { PanelId, Sheet } from "../../lib/sheet";

export interface NewPanel {
  readonly frame: Frame;
  readonly pose: PoseName;
  readonly weightOn: Side | null;
}

const NEXT_POSE: Readonly<Record<PoseName, PoseName>> = {
  stand: "lead-in",
  "lead-in": "contact",
  contact: "down",
  down: "passing",
  passing: "up",
  up: "contact",
  breakdown: "breakdown",
};

/**
 * What a panel added behind another is: between two, a breakdown half way; behind the last, the next
 * pose a usual gap later. Two panels on one frame are allowed, so there is always room.
 */
export function panelAfter(sheet: Sheet, id: PanelId): NewPanel {
  const at = sheet.panels.findIndex((panel) => panel.id === id);
  const here = sheet.panels[at];
  if (here === undefined) return { frame: 1, pose: "contact", weightOn: "left" };
  const next = sheet.panels[at + 1];
  if (next !== undefined) {
    const frame = Math.max(here.frame, Math.floor((here.frame + next.frame) / 2));
    return { frame, pose: "breakdown", weightOn: here.weightOn };
  }
  const pose = NEXT_POSE[here.pose];
  const stepsOver = pose === "contact" && here.weightOn !== null;
  const weightOn = stepsOver && here.weightOn !== null ? otherSide(here.weightOn) : here.weightOn;
  const side = here.weightOn ?? "left";
  const gap = Math.max(1, Math.round(sheet.head.framesPerStep[side] / 4));
  return { frame: here.frame + gap, pose, weightOn };
}
