import { mirroredMarks, PANEL, type PoseMarks, type ViewMarks } from "../../body";
import { VIEWS, type View } from "../../geometry";
import type { InkPoint, Stroke } from "../../ink";
import type { Panel } from "../sheet";
import { type CannotPass, type PassOn, passingTo } from "./passing";

/**
 * The pose of one panel for another: each view that is marked there takes the place of the other's
 * marks, whole; a view without marks leaves what is there. The ink comes along where it is wished.
 *
 * Units:   panel units
 */
export function poseCopy(from: Panel, to: Panel, ink: boolean): PassOn {
  const refused = refusal(from, to, ink);
  if (refused !== null) return refused;
  const strokes = ink ? inkFor(from, to, (stroke) => stroke.points) : [];
  return passingTo(to, taken(from.marks, to.marks), strokes);
}

/**
 * The pose of one step for the other: left and right exchanged (see `mirroredMarks`). Side views keep
 * their direction, so their ink, where it is wished, is copied as it is; front views are turned about
 * the paper's middle, ink too.
 *
 * Units:   panel units
 */
export function poseMirror(from: Panel, to: Panel, ink: boolean): PassOn {
  const refused = refusal(from, to, ink);
  if (refused !== null) return refused;
  const marks = {
    side: mirroredMarks(from.marks.side, "side"),
    front: mirroredMarks(from.marks.front, "front"),
  };
  const strokes = ink
    ? inkFor(from, to, ({ points }, view) => (view === "side" ? points : points.map(turned)))
    : [];
  return passingTo(to, withLoad(taken(marks, to.marks), to.marks), strokes);
}

function refusal(from: Panel, to: Panel, ink: boolean): CannotPass | null {
  if (from.id === to.id) return { kind: "cannot", why: "it is the same panel" };
  const marked = VIEWS.some((view) => Object.keys(from.marks[view]).length > 0);
  if (marked || (ink && VIEWS.some((view) => from.ink[view].length > 0))) return null;
  return { kind: "cannot-tell", needs: ink ? "marks or ink to copy" : "marks to copy" };
}

/** Marked views replace, others leave what is there. */
function taken(given: PoseMarks, own: PoseMarks): PoseMarks {
  const pick = (view: View): ViewMarks =>
    Object.keys(given[view]).length > 0 ? given[view] : own[view];
  return { side: pick("side"), front: pick("front") };
}

/** A mirrored pose says nothing of the load: the panel keeps the one it has. */
function withLoad(marks: PoseMarks, own: PoseMarks): PoseMarks {
  const kept = (view: View): ViewMarks => {
    const { load } = own[view];
    return load === undefined ? marks[view] : { ...marks[view], load };
  };
  return { side: kept("side"), front: kept("front") };
}

function inkFor(
  from: Panel,
  to: Panel,
  points: (stroke: Stroke, view: View) => readonly InkPoint[],
): Stroke[] {
  return VIEWS.flatMap((view) =>
    from.ink[view].map(({ id: _id, ...stroke }) => ({
      ...stroke,
      panel: to.id,
      points: points(stroke, view),
    })),
  );
}

function turned([x, y, pressure]: InkPoint): InkPoint {
  return [PANEL.width - x, y, pressure];
}
