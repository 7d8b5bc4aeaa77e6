import type { Remark } from "../../gait";
import type { Point, View } from "../../geometry";
import type { Panel } from "../../sheet";
import type { Box } from "../shapes";

export type Line = readonly [from: Point, to: Point];
export type Path = readonly Point[];

/** How a remark is drawn on the panel where it is seen. Units: panel units, y down. */
export interface RemarkShape {
  /** The space between two levels, washed over. */
  readonly area: Box | null;
  /** What is held against: a plumb line, a level, the other pose's limb. */
  readonly dashed: readonly Path[];
  /** What is there: the span of the feet, the sole, the limb. */
  readonly solid: readonly Path[];
  /** Where a joint was, or should be. */
  readonly rings: readonly Point[];
  /** Which joint is whose, where that is what the remark is about. */
  readonly letters: readonly Letter[];
  /** From where it should be to where it is; null where a line says it. */
  readonly arrow: Line | null;
  /** What the amount belongs to. */
  readonly label: Point;
}

export interface Letter {
  readonly text: "L" | "R";
  readonly at: Point;
}

export type ShapePanel = Pick<Panel, "id" | "frame" | "pose" | "marks">;

/** A panel beside those that a remark names, and how far its ground lies along this paper, panel units. */
export interface Beside {
  readonly panel: ShapePanel;
  readonly groundShift: number;
}

/** Where a remark is drawn. */
export interface ShapeOn {
  readonly panel: ShapePanel;
  readonly view: View;
  /** The first panel that the remark names; null where that is this one, or none. */
  readonly earlier: ShapePanel | null;
  /** How far the earlier panel's ground lies along this panel's paper, panel units; 0 where nobody knows. */
  readonly groundShift: number;
  /** The panel before the earlier one, and the one after this: a path through both goes on to them. */
  readonly before: Beside | null;
  readonly after: Beside | null;
  /** Panel units. */
  readonly legLength: number;
  /** What is carried, as a share of body mass. */
  readonly load: number;
  /** What is seen of the view, panel units. */
  readonly window: Box;
}

/** What a shape is made from. */
export interface Shaping extends ShapeOn {
  readonly remark: Pick<Remark, "check" | "side" | "spots" | "measured" | "expected">;
  /** The remark's last spot in this view of this panel, and its last on the earlier one. */
  readonly joints: Remark["spots"][number]["joints"];
  readonly earlierJoints: Remark["spots"][number]["joints"];
}

export type Shaper = (shaping: Shaping) => RemarkShape | null;

/** A shape of what is named alone. */
export function shapeOf(parts: Partial<RemarkShape> & Pick<RemarkShape, "label">): RemarkShape {
  const none = { area: null, dashed: [], solid: [], rings: [], letters: [], arrow: null };
  return { ...none, ...parts };
}
