import { type Remark, reviewWalk, type Walk, type Yardstick } from "../../lib/gait";

/** A remark as far as it does not depend on the last digit of a sum. */
export const told = ({ check, level, side, panels, title, measured }: Remark) =>
  [check, level, side, panels.join(), title, measured.value.toFixed(6)].join(" · ");

/** What is remarked on a walk, in an order of its own. */
export const remarksOf = (judged: Walk, yardstick: Yardstick): readonly string[] =>
  reviewWalk(judged, yardstick).remarks.map(told).toSorted();
