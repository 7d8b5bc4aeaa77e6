import { limbJoint, otherSide, type Side } from "../../lib/body";
import type { Walk } from "../../lib/gait";
import {
  alongOf,
  carry,
  footOf,
  heightOf,
  hipsUp,
  lowestOf,
  moveFoot,
  moveMarks,
} from "./seeded/posed";
import type { Fault } from "./seeding";

const DEGREES = Math.PI / 180;

/** The most that captured pairs of mirrored poses differ by: leg lengths, and radians at passing. */
const MOST = { hips: 0.027, lift: 0.027, knee: 8.4 * DEGREES, thigh: 5.3 * DEGREES } as const;

/** The step that comes second in the walk: a remark of a pair is told on it. */
export const isSecond = (into: Walk, side: Side) =>
  into.panels.find(({ pose }) => pose === "contact")?.weightOn === otherSide(side);

/** How far a bone's lower end is ahead of where it hangs straight. Radians. */
function leanOf(
  from: Walk,
  name: string,
  side: Side,
  [top, low]: readonly ["hip" | "knee", "knee" | "ankle"],
): number {
  const [upper, lower] = [limbJoint(side, top), limbJoint(side, low)];
  return Math.atan2(
    alongOf(from, name, lower) - alongOf(from, name, upper),
    heightOf(from, name, upper) - heightOf(from, name, lower),
  );
}

const thighOf = (from: Walk, name: string, side: Side) => leanOf(from, name, side, ["hip", "knee"]);
const kneeOf = (from: Walk, name: string, side: Side) =>
  thighOf(from, name, side) - leanOf(from, name, side, ["knee", "ankle"]);

/** The foot that swings at a side's passing drawn up under its hip until the knee bends as far as asked. */
function drawnUp(into: Walk, side: Side, bend: number): Walk {
  const [name, swings] = [`${side} passing`, otherSide(side)];
  const raised = (up: number) => moveFoot(into, name, swings, { up });
  let [low, high] = [-0.1, 0.5];
  for (let halving = 0; halving < 40; halving += 1) {
    const middle = (low + high) / 2;
    if (kneeOf(raised(middle), name, swings) < bend) low = middle;
    else high = middle;
  }
  return raised(low);
}

/** A leg swung about its hip as it is, the foot as it is pitched. Radians, forward above 0. */
function legSwung(into: Walk, name: string, side: Side, by: number): Walk {
  const at = (part: "hip" | "knee" | "ankle") => ({
    x: alongOf(into, name, limbJoint(side, part)),
    y: heightOf(into, name, limbJoint(side, part)),
  });
  const hip = at("hip");
  const moved = (part: "knee" | "ankle") => {
    const [x, y] = [at(part).x - hip.x, at(part).y - hip.y];
    const ahead = x * Math.cos(by) - y * Math.sin(by) - x;
    return { ahead, up: x * Math.sin(by) + y * Math.cos(by) - y };
  };
  const bent = moveMarks(into, name, [limbJoint(side, "knee")], moved("knee"));
  return moveMarks(bent, name, footOf(side), moved("ankle"));
}

const LIFTED = "a foot that is lifted more than its like is lifted more than a walk spends";
const pair = { check: "symmetry", level: "tidy", fits: isSecond } as const;

/** Poses that are not the mirror image of the same pose of the other step. */
export const PAIR_FAULTS: readonly Fault[] = [
  {
    ...pair,
    name: "hips that are lower at one of two downs",
    subject: "hips",
    panels: ["~ down", "@ down"],
    brings: { "hip-range": "a body that sinks deeper rises and sinks by more" },
    put(into, side, times) {
      const to = hipsUp(into, `${otherSide(side)} down`) - times * MOST.hips;
      return carry(into, `${side} down`, { up: to - hipsUp(into, `${side} down`) });
    },
  },
  {
    ...pair,
    name: "foot that is lifted more in one step",
    subject: "lift",
    panels: ["~ passing", "@ passing"],
    foot: true,
    brings: { clearance: LIFTED },
    put(into, side, times) {
      const to = lowestOf(into, `${otherSide(side)} passing`, side) + times * MOST.lift;
      const name = `${side} passing`;
      const swings = otherSide(side);
      return moveFoot(into, name, swings, { up: to - lowestOf(into, name, swings) });
    },
  },
  {
    ...pair,
    name: "knee that bends more as it swings in one step",
    subject: "knee",
    panels: ["~ passing", "@ passing"],
    brings: { clearance: LIFTED },
    put: (into, side, times) =>
      drawnUp(into, side, kneeOf(into, `${otherSide(side)} passing`, side) + times * MOST.knee),
  },
  {
    ...pair,
    name: "thigh that is swung farther ahead in one step",
    subject: "thigh",
    panels: ["~ passing", "@ passing"],
    put(into, side, times) {
      const name = `${side} passing`;
      const to = thighOf(into, `${otherSide(side)} passing`, side) + times * MOST.thigh;
      return legSwung(into, name, otherSide(side), to - thighOf(into, name, otherSide(side)));
    },
  },
];
