import type { JointName } from "./joint";

/** A joint's point in one view of a panel. Units: panel units, y down; precision likewise (±). */
export interface Mark {
  readonly x: number;
  readonly y: number;
  readonly precision: number;
}

/** The marks of one view. A joint that is not there was not marked. */
export type ViewMarks = { readonly [J in JointName]?: Mark };

export interface PoseMarks {
  readonly side: ViewMarks;
  readonly front: ViewMarks;
}
