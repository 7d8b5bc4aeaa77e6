import { otherSide, type Side } from "../../lib/body";
import {
  type Exposure,
  type Frame,
  nearestDrawn,
  nextDrawn,
  type PoseName,
} from "../../lib/motion";
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
 * pose a usual gap later; each on a drawn frame. Where none is left between two it comes on the frame of
 * the first: two panels on one frame are allowed, so there is always room.
 */
export function panelAfter(sheet: Sheet, id: PanelId): NewPanel {
  const at = sheet.panels.findIndex((panel) => panel.id === id);
  const here = sheet.panels[at];
  if (here === undefined) return { frame: 1, pose: "contact", weightOn: "left" };
  const { exposure, framesPerStep } = sheet.head;
  const next = sheet.panels[at + 1];
  if (next !== undefined) {
    const frame = drawnBetween(here.frame, next.frame, exposure);
    return { frame, pose: "breakdown", weightOn: here.weightOn };
  }
  const pose = NEXT_POSE[here.pose];
  const stepsOver = pose === "contact" && here.weightOn !== null;
  const weightOn = stepsOver && here.weightOn !== null ? otherSide(here.weightOn) : here.weightOn;
  const side = here.weightOn ?? "left";
  const usual = nearestDrawn(here.frame + framesPerStep[side] / 4, exposure);
  return { frame: Math.max(usual, nextDrawn(here.frame, 1, exposure)), pose, weightOn };
}

/** The drawn frame half way between two, the earlier of two such; the first's own where there is none. */
function drawnBetween(first: Frame, second: Frame, exposure: Exposure): Frame {
  const middle = nextDrawn(Math.floor((first + second) / 2) + 1, -1, exposure);
  if (middle > first) return middle;
  const next = nextDrawn(first, 1, exposure);
  return next < second ? next : first;
}
