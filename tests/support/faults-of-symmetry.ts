import { limbJoint, otherSide, SIDES, type Side } from "../../lib/body";
import type { Walk } from "../../lib/gait";
import { acrossOf, atBoth, heightOf, moveMarks } from "./seeded/posed";
import type { Fault } from "./seeding";

const DEGREES = Math.PI / 180;

/** One shoulder so low that the line of both leans by so much, its arm hanging from it. */
function leaning(into: Walk, name: string, low: Side, degrees: number): Walk {
  const [shoulder, other] = [limbJoint(low, "shoulder"), limbJoint(otherSide(low), "shoulder")];
  const apart = Math.abs(acrossOf(into, name, shoulder) - acrossOf(into, name, other));
  const to = heightOf(into, name, other, "front") - apart * Math.tan(degrees * DEGREES);
  const arm = (["shoulder", "elbow", "wrist"] as const).map((part) => limbJoint(low, part));
  return moveMarks(into, name, arm, { up: to - heightOf(into, name, shoulder, "front") });
}

/** Steps that are not each other's mirror image. */
export const SYMMETRY_FAULTS: readonly Fault[] = [
  {
    name: "shoulder that stays low",
    check: "symmetry",
    level: "may-show",
    panels: ["@ contact", "~ contact"],
    put: (into, side, times) =>
      SIDES.reduce<Walk>(
        (rest, step) =>
          atBoth(rest, `${step} contact`, (one, name) => leaning(one, name, side, times * 7.6)),
        into,
      ),
  },
];
