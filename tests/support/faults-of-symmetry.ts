import { limbJoint, otherSide, SIDES, type Side } from "../../lib/body";
import type { Walk } from "../../lib/gait";
import { isSecond } from "./faults-of-pairs";
import { landing } from "./faults-of-readings";
import { acrossOf, alongOf, atBoth, heightOf, moveMarks, nextOf } from "./seeded/posed";
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

/** From heel to heel, leg lengths. */
function lengthOf(from: Walk, side: Side): number {
  const lands = limbJoint(otherSide(side), "heel");
  const stands = limbJoint(side, "heel");
  return alongOf(from, nextOf(from, side), lands) - alongOf(from, `${side} contact`, stands);
}

type ArmPart = "shoulder" | "elbow" | "wrist";
const spotIn = (from: Walk, name: string, side: Side, part: ArmPart) => ({
  x: alongOf(from, name, limbJoint(side, part)),
  y: heightOf(from, name, limbJoint(side, part)),
});

/** How far an elbow is bent: the forearm's lean less the upper arm's. Radians. */
function elbowOf(from: Walk, name: string, side: Side): number {
  const [shoulder, elbow, wrist] = (["shoulder", "elbow", "wrist"] as const).map((part) =>
    spotIn(from, name, side, part),
  );
  if (!shoulder || !elbow || !wrist) throw new Error("an arm has three joints");
  return (
    Math.atan2(wrist.x - elbow.x, elbow.y - wrist.y) -
    Math.atan2(elbow.x - shoulder.x, shoulder.y - elbow.y)
  );
}

/** A side's arm bent about its elbow as far as asked. */
function bentTo(into: Walk, name: string, side: Side, bend: number): Walk {
  const [elbow, wrist] = [spotIn(into, name, side, "elbow"), spotIn(into, name, side, "wrist")];
  const by = bend - elbowOf(into, name, side);
  const [x, y] = [wrist.x - elbow.x, wrist.y - elbow.y];
  const ahead = x * Math.cos(by) - y * Math.sin(by) - x;
  const up = x * Math.sin(by) + y * Math.cos(by) - y;
  return moveMarks(into, name, [limbJoint(side, "wrist")], { ahead, up });
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
  {
    name: "step that is longer than the other",
    check: "symmetry",
    level: "shows",
    panels: ["first", "second", "end"],
    foot: true,
    fits: isSecond,
    fixed: 0, // how long a step is, is drawn in every pose of it
    brings: {
      tempo: "a step that is much longer than the other is long",
      hitch: "the body stays while the foot lands elsewhere",
      snap: "the leg reaches for a foot that lands elsewhere",
      reach: "a foot so far from hips that stayed is out of the leg's reach",
      "limb-length": "a leg that cannot reach is drawn longer",
      "weight-side": "hips that stayed are not over feet that went on",
      loop: "the last pose has another step than the first",
    },
    put(into, side, times) {
      const index = times * 0.15;
      const length = (lengthOf(into, otherSide(side)) * (2 + index)) / (2 - index);
      return landing(into, side, length);
    },
  },
  {
    name: "elbows that bend more in one step",
    check: "symmetry",
    level: "tidy",
    panels: ["~ passing", "@ passing"],
    fits: isSecond,
    brings: { hitch: "forearms that are thrown up in one pose break their arc" },
    put: (into, side, times) =>
      SIDES.reduce((rest, arm) => {
        const partner = elbowOf(into, `${otherSide(side)} passing`, otherSide(arm));
        return bentTo(rest, `${side} passing`, arm, partner + times * 18 * DEGREES);
      }, into),
  },
];
