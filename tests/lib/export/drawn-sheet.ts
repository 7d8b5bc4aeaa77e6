import { bonesOf, type ViewMarks } from "../../../lib/body";
import { type Review, reviewWalk } from "../../../lib/gait";
import { VIEWS, type View } from "../../../lib/geometry";
import {
  capturedExample,
  type HandedSheet,
  type InkStroke,
  type Panel,
  type Sheet,
  type SheetHead,
  walkOf,
} from "../../../lib/sheet";

/** How a test's sheet differs from the captured walk, drawn and repeated. */
export interface DrawnWish {
  readonly head?: Partial<SheetHead>;
  /** A change to a panel, by its index. */
  readonly change?: (panel: Panel, index: number) => Panel;
}

/**
 * A sheet of so many panels: the captured stride over and over, each pose drawn as pencil lines
 * along its limbs. What it is printed from is what the board itself makes of a real walk.
 */
export function drawnSheet(count: number, { head = {}, change }: DrawnWish = {}): Sheet {
  let id = 0;
  const captured = capturedExample(() => `stride-${id++}`);
  const stride = captured.panels.slice(0, -1);
  const frames = captured.head.loop.to - captured.head.loop.from;
  const panels = Array.from({ length: count }, (_, index): Panel => {
    const round = Math.floor(index / stride.length);
    const pose = stride[index % stride.length] as Panel;
    const panel = {
      ...pose,
      id: `panel-${index}`,
      frame: pose.frame + round * frames,
      place: (pose.place ?? 0) + round * 2 * captured.head.stepLength,
    };
    const drawn = { ...panel, ink: inkOf(panel) };
    return change === undefined ? drawn : change(drawn, index);
  });
  return { head: { ...captured.head, ...head }, panels };
}

/** The review that a sheet is printed with. */
export function reviewOf(sheet: HandedSheet): Review {
  return reviewWalk(walkOf(sheet), sheet.head.yardstick, sheet.onPurpose);
}

function inkOf({ id, marks }: Panel): Panel["ink"] {
  const [side, front] = VIEWS.map((view) => linesAlong(marks[view], id, view));
  return { side: side ?? [], front: front ?? [] };
}

function linesAlong(marks: ViewMarks, panel: string, view: View): InkStroke[] {
  return bonesOf(marks).map(({ start, end }, index) => ({
    id: `${panel}-${view}-${index}`,
    panel,
    view,
    nib: "broad",
    colour: "graphite",
    width: 10,
    z: index,
    points: Array.from({ length: 6 }, (_, step) => {
      const share = step / 5;
      const x = start.x + share * (end.x - start.x);
      return [x, start.y + share * (end.y - start.y), 0.6] as const;
    }),
  }));
}

/** The same panel with one foot further along the ground: a slip. Units: panel units. */
export function slipped(panel: Panel, side: "left" | "right", by: number): Panel {
  const moved = Object.entries(panel.marks.side).map(([joint, mark]) => {
    const foot = ["ankle", "heel", "ball", "toe"].some((part) => joint === `${side}-${part}`);
    return [joint, foot ? { ...mark, x: mark.x + by } : mark];
  });
  return { ...panel, marks: { ...panel.marks, side: Object.fromEntries(moved) } };
}

/** The same panel with its hips lower on the paper. Units: panel units. */
export function sunk(panel: Panel, by: number): Panel {
  const lowered = (marks: ViewMarks) =>
    Object.fromEntries(
      Object.entries(marks).map(([joint, mark]) => [
        joint,
        joint.endsWith("-hip") ? { ...mark, y: mark.y + by } : mark,
      ]),
    );
  const { side, front } = panel.marks;
  return { ...panel, marks: { side: lowered(side), front: lowered(front) } };
}
