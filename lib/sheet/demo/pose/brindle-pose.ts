import type { Side } from "../../../body";
import type { PoseName } from "../../../motion";
import type { Turn } from "./space";

/** How a foot stands, by what of it bears. Leg lengths; degrees, toe up. */
export type FootPose =
  /** On the ground: `heel` is the ground x of the heel when the foot lay flat. */
  | { readonly on: "heel" | "flat" | "ball"; readonly heel: number; readonly pitch: number }
  /** In the air: the ankle, from the panel's middle and over the ground. */
  | { readonly on: "air"; readonly ankle: readonly [x: number, y: number]; readonly pitch: number };

/** One panel of Brindle's walk. Leg lengths and degrees. */
export interface BrindlePose {
  readonly pose: PoseName;
  readonly weightOn: Side | null;
  /** The frame it was drawn for: where the ground lies under him. */
  readonly frame: number;
  /** Ground x of the panel's middle, where the advance does not tell it. */
  readonly place?: number;
  /** Middle of the hips: from the panel's middle, over the ground, to his right. */
  readonly hips: readonly [x: number, y: number, z: number];
  readonly pelvis: Turn;
  /** How far the spine leans to his left, degrees: away from the sack, less when the left leg carries. */
  readonly spine: number;
  readonly chest: Turn;
  readonly head: Turn;
  readonly feet: { readonly [S in Side]: FootPose };
  /** The free arm: upper arm forward of hanging, how much the elbow bends, and the hand ahead of the forearm. */
  readonly arm: { readonly swing: number; readonly bend: number; readonly hand: number };
  /** What hangs on him and comes a little after: sack turned forward (degrees) and dropped; hem and scarf. */
  readonly drag: {
    readonly sack: readonly [turn: number, drop: number];
    readonly hem: readonly [front: number, back: number];
    readonly scarf: number;
  };
  /** How much it costs him, 0..1: brows, eyes, moustache. */
  readonly effort: number;
}
