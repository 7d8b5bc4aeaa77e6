import { type JointName, type LimbJoint, limbJoint, type Mark, type ViewMarks } from "../body";
import { POSES } from "../motion";
import type { Fix, FixChange, MovedMark } from "./fix";
import type { Walk, WalkPanel } from "./walk";

/**
 * The walk as a fix would leave it: for a ghost, and to see whether it helps. Panels that are added
 * get ids that begin with `added`; panels that the walk does not have are passed over.
 *
 * Shapes:  panels in the strip's order
 * Errors:  none
 */
export function applyFix(walk: Walk, { changes }: Pick<Fix, "changes">): Walk {
  const panels = changes.reduce<readonly WalkPanel[]>(changed, walk.panels);
  const set = changes.findLast((change) => change.kind === "advance");
  return {
    ...walk,
    advance: set?.advance ?? walk.advance,
    panels: panels.toSorted(inOrder),
  };
}

/** By frame, on one frame as a step runs, then by id: as the strip has them. */
function inOrder(a: WalkPanel, b: WalkPanel): number {
  return (
    a.frame - b.frame || POSES.indexOf(a.pose) - POSES.indexOf(b.pose) || (a.id < b.id ? -1 : 1)
  );
}

function changed(panels: readonly WalkPanel[], change: FixChange): readonly WalkPanel[] {
  if (change.kind === "add-panel") {
    const { kind: _, ...added } = change;
    return [...panels, { id: `added ${added.pose} ${added.frame}`, ...added }];
  }
  if (change.kind === "advance") return panels;
  return panels.map((panel) => (panel.id === change.panel ? changedPanel(panel, change) : panel));
}

function changedPanel(
  panel: WalkPanel,
  change: Exclude<FixChange, { kind: "add-panel" | "advance" }>,
): WalkPanel {
  switch (change.kind) {
    case "move-marks": {
      const marks = moved(panel.marks[change.view], change.marks);
      return { ...panel, marks: { ...panel.marks, [change.view]: marks } };
    }
    case "exchange-sides": {
      const marks = exchanged(panel.marks[change.view], change.joints);
      return { ...panel, marks: { ...panel.marks, [change.view]: marks } };
    }
    case "slide":
      return { ...panel, frame: change.frame };
    case "place":
      return { ...panel, place: change.place };
    case "relabel":
      return { ...panel, pose: change.pose, weightOn: change.weightOn };
  }
}

function moved(marks: ViewMarks, to: readonly MovedMark[]): ViewMarks {
  const after: Partial<Record<JointName, Mark>> = { ...marks };
  for (const { joint, x, y } of to) {
    const mark = marks[joint];
    if (mark !== undefined) after[joint] = { ...mark, x, y };
  }
  return after;
}

function exchanged(marks: ViewMarks, joints: readonly LimbJoint[]): ViewMarks {
  const after: Partial<Record<JointName, Mark>> = { ...marks };
  for (const joint of joints) {
    const [left, right] = [limbJoint("left", joint), limbJoint("right", joint)];
    for (const [to, mark] of [
      [left, marks[right]],
      [right, marks[left]],
    ] as const) {
      if (mark === undefined) delete after[to];
      else after[to] = mark;
    }
  }
  return after;
}
