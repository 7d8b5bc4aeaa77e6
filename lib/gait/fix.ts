import type { JointName, LimbJoint, PoseMarks, Side } from "../body";
import type { View } from "../geometry";
import type { Frame, PoseName } from "../motion";

/** A mark's new point, panel units. Its precision stays what it was. */
export interface MovedMark {
  readonly joint: JointName;
  readonly x: number;
  readonly y: number;
}

/** One thing that a fix would do. Panels are named by their ids; ground in leg lengths. */
export type FixChange =
  | {
      readonly kind: "move-marks";
      readonly panel: string;
      readonly view: View;
      readonly marks: readonly MovedMark[];
    }
  /** How far the ground goes by a frame, leg lengths; no panel is touched. */
  | { readonly kind: "advance"; readonly advance: number }
  /** Left marks under right names and the other way round; of a joint marked on one side, that mark. */
  | {
      readonly kind: "exchange-sides";
      readonly panel: string;
      readonly view: View;
      readonly joints: readonly LimbJoint[];
    }
  | { readonly kind: "slide"; readonly panel: string; readonly frame: Frame }
  /** The ground x of a panel's middle, so that its drawing stays on the ground when its stem moves. */
  | { readonly kind: "place"; readonly panel: string; readonly place: number }
  | {
      readonly kind: "relabel";
      readonly panel: string;
      readonly pose: PoseName;
      readonly weightOn: Side | null;
    }
  | {
      readonly kind: "add-panel";
      readonly frame: Frame;
      readonly pose: PoseName;
      readonly weightOn: Side | null;
      /** Where the marks were worked out for; null follows from the advance. */
      readonly place: number | null;
      readonly marks: PoseMarks;
    };

/** What would settle a remark. Nothing is done by it: it is shown first, and may be left. */
export interface Fix {
  /** What it does, as a button says it: "Raise the hips by 2.0 % of a leg". */
  readonly title: string;
  readonly changes: readonly FixChange[];
}
