import { type JointName, type Mark, markOf, type Side, type ViewMarks } from "../../lib/body";
import { type PlacedFigure, placedFigure, type Walk, type Yardstick } from "../../lib/gait";
import type { PoseName } from "../../lib/motion";
import { type Brief, defaultBrief, layOut, walkOf } from "../../lib/sheet";
import { ids } from "./peers";

/** A strip with nothing on it, as a brief lays it out. */
export const emptyWalk = (brief: Partial<Brief> = {}): Walk =>
  walkOf(layOut({ ...defaultBrief, ...brief }, ids()));

/** The figure that is placed on a panel, where one can be. */
export function figureOf(walk: Walk, id: string, yardstick: Yardstick): PlacedFigure {
  const placed = placedFigure(walk, id, yardstick);
  if (placed.kind === "cannot-tell") throw new Error(`needs ${placed.needs}`);
  return placed;
}

/** A pose by itself: nothing says how long its step is, so the published angles stand as they are. */
export function alone(pose: PoseName, weightOn: Side | null): Walk {
  const walk = emptyWalk();
  const [first] = walk.panels;
  if (first === undefined) throw new Error("a strip has panels");
  return { ...walk, panels: [{ ...first, id: "alone", pose, weightOn }] };
}

/** A mark that is there. */
export const mark = (marks: ViewMarks, joint: JointName): Mark => {
  const found = markOf(marks, joint);
  if (found === null) throw new Error(`no ${joint}`);
  return found;
};
