import type { JointName, Side } from "./joint";
import type { Mark } from "./mark";

/** A point of the body that tables of masses go by: a joint, or what anatomists mark beside them. */
export type Landmark =
  | JointName
  | "vertex"
  | "mid-gonion"
  | "ear-canal"
  | "suprasternale"
  | `${Side}-knuckle`;

/** Landmarks of one view. A board's marks are some of them. */
export type Landmarks = { readonly [L in Landmark]?: Mark };
