import type { JointName, Side } from "../../lib/body";
import type { Walk } from "../../lib/gait";
import type { Fault } from "./seeding";
import { lift, type PanelName, push } from "./walk";

const PARTS = ["ankle", "heel", "ball", "toe"] as const;
const foot = (side: Side) => PARTS.map((part): JointName => `${side}-${part}`);
const POSES = ["contact", "down", "passing", "up"] as const;

/** Ball and toe lifted so far that the foot pitches by so many degrees about its heel. */
function pitched(into: Walk, name: PanelName, side: Side, degrees: number): Walk {
  const slope = Math.tan((degrees * Math.PI) / 180);
  const ball = lift(into, name, [`${side}-ball`], 0.18 * slope);
  return lift(ball, name, [`${side}-toe`], 0.25 * slope);
}

/** The toe this far over its heel, the ball in proportion. */
function toeOver(into: Walk, name: PanelName, side: Side, legs: number): Walk {
  const marks = into.panels.find(({ id }) => id === name)?.marks.side;
  const now = ((marks?.[`${side}-heel`]?.y ?? 0) - (marks?.[`${side}-toe`]?.y ?? 0)) / 420;
  const ball = lift(into, name, [`${side}-ball`], 0.7 * (legs - now));
  return lift(ball, name, [`${side}-toe`], legs - now);
}

/** Feet off the ground or in it. */
export const GROUND_FAULTS: readonly Fault[] = POSES.flatMap((pose): Fault[] => [
  {
    name: `foot that floats at ${pose}`,
    check: "float",
    level: "shows",
    panels: [`@ ${pose}`],
    put: (into, side, times) => lift(into, `${side} ${pose}`, foot(side), times * 0.02),
  },
  {
    name: `foot that sinks at ${pose}`,
    check: "sink",
    level: "shows",
    panels: [`@ ${pose}`],
    put: (into, side, times) => lift(into, `${side} ${pose}`, foot(side), -times * 0.02),
  },
]);

/** Feet that land, lie or leave otherwise than feet do. */
export const ROLL_FAULTS: readonly Fault[] = [
  {
    name: "foot that lands toe first",
    check: "foot-roll",
    level: "may-show",
    panels: ["@ contact"],
    // The toe stands 10 % over its heel and is to stay above 2 %.
    put: (into, side, times) => toeOver(into, `${side} contact`, side, 0.1 - times * 0.08),
  },
  {
    name: "foot that is not flat at passing",
    check: "foot-roll",
    level: "may-show",
    panels: ["@ passing"],
    put: (into, side, times) => pitched(into, `${side} passing`, side, times * 10),
  },
  {
    name: "heel that is up at passing",
    check: "foot-roll",
    level: "may-show",
    panels: ["@ passing"],
    put: (into, side, times) => pitched(into, `${side} passing`, side, -times * 10),
  },
  {
    name: "foot that is not flat at the down",
    check: "foot-roll",
    level: "may-show",
    panels: ["@ down"],
    yardsticks: ["trade"],
    put: (into, side, times) => pitched(into, `${side} down`, side, times * 10),
  },
  {
    name: "foot that leaves toe first",
    check: "foot-roll",
    level: "may-show",
    panels: ["@ up"],
    put: (into, side, times) => toeOver(into, `${side} up`, side, times * 0.02),
  },
];

/** Poses drawn as another than they are labelled. */
export const SHAPE_FAULTS: readonly Fault[] = [
  {
    name: "contact drawn as a passing",
    check: "pose-order",
    level: "may-show",
    panels: ["@ contact"],
    put: (into, side, times) => crossed(into, side, 0.05 / times),
  },
  {
    name: "passing drawn as a contact",
    check: "pose-order",
    level: "may-show",
    panels: ["@ passing"],
    put: (into, side, times) => strided(into, side, 0.72 + times * 0.05),
  },
];

/** At contact the other foot this far behind the one that lands, and in the air. */
function crossed(into: Walk, side: Side, apart: number): Walk {
  const other: Side = side === "left" ? "right" : "left";
  const beside = push(into, `${side} contact`, foot(other), 0.72 - apart);
  return lift(beside, `${side} contact`, foot(other), 0.1);
}

/** At passing the other foot this far ahead of the one that carries, its toe up. */
function strided(into: Walk, side: Side, apart: number): Walk {
  const other: Side = side === "left" ? "right" : "left";
  const name: PanelName = `${side} passing`;
  return toeOver(push(into, name, foot(other), apart), name, other, 0.1);
}
