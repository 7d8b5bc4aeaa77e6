import type { PoseMarks } from "../body";
import type { Walk, WalkPanel } from "../gait";
import type { Panel, Sheet } from "./sheet";

/** The sheet as the gait library measures it. Panels are the sheet's own, so what is kept by them holds. */
export function walkOf({ head, panels }: Sheet): Walk {
  const { kind, framesPerSecond, exposure, travel, ground, advance, build, load } = head;
  const solved = ground === "solved" ? { ground } : {};
  const carried = load === undefined ? {} : { load };
  const pace = { kind, framesPerSecond, exposure, travel, ...solved, advance };
  return { ...pace, build, ...carried, panels };
}

/**
 * The same for a review, in panels that know nothing of ink: they are the same objects until something changes
 * that is measured, so after a stroke nothing is read again. They are known by their ids, not as the sheet's.
 */
export function measuredWalkOf(sheet: Sheet): Walk {
  return { ...walkOf(sheet), panels: sheet.panels.map(measured) };
}

/** A panel as it was last measured, for as long as somebody holds its marks, which no stroke replaces. */
const lastMeasured = new WeakMap<PoseMarks, WalkPanel>();

function measured({ id, frame, pose, weightOn, place, marks }: Panel): WalkPanel {
  const before = lastMeasured.get(marks);
  const same = before?.id === id && before.frame === frame && before.pose === pose;
  if (same && before.weightOn === weightOn && before.place === place) return before;
  const now = { id, frame, pose, weightOn, place, marks };
  lastMeasured.set(marks, now);
  return now;
}
