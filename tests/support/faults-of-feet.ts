import { limbJoint, otherSide, type Side } from "../../lib/body";
import type { Walk } from "../../lib/gait";
import {
  alongOf,
  atBoth,
  heightOf,
  kneesSolved,
  lowestOf,
  moveFoot,
  moveMarks,
  nextOf,
} from "./seeded/posed";
import type { Fault } from "./seeding";

const POSES = ["contact", "down", "passing", "up"] as const;

const ONE_STEP = "a leg that is drawn otherwise in one step alone is no mirror image of the other";
const REACHES = "a leg that is nearly straight has to be drawn longer to go through the floor";

/** The foot put so far over the ground, its lowest mark; below 0 under it. */
function standing(into: Walk, name: string, side: Side, legs: number): Walk {
  return moveFoot(into, name, side, { up: legs - lowestOf(into, name, side) });
}

/** Feet off the ground or in it. */
export const GROUND_FAULTS: readonly Fault[] = POSES.flatMap((pose): Fault[] => [
  {
    name: `foot that floats at its ${pose}`,
    check: "float",
    level: "shows",
    panels: [`@ ${pose}`],
    foot: true,
    brings: {
      symmetry: ONE_STEP,
      // At the up the other foot is in the air already.
      ...(pose === "up" ? { tempo: "no foot is on the ground then" } : {}),
    },
    put: (into, side, times) =>
      atBoth(into, `${side} ${pose}`, (rest, name) => standing(rest, name, side, times * 0.02)),
  },
  {
    name: `foot that sinks at its ${pose}`,
    check: "sink",
    level: "shows",
    panels: [`@ ${pose}`],
    foot: true,
    brings: { reach: REACHES, "limb-length": REACHES, symmetry: ONE_STEP },
    put: (into, side, times) =>
      atBoth(into, `${side} ${pose}`, (rest, name) =>
        standing(rest, name, side, -times * sinkLimit(rest, name, side)),
      ),
  },
]);

/** A foot that peels, drawn in one piece, has its tip in the ground: there 3 % pass instead of 2. */
function sinkLimit(from: Walk, name: string, side: Side): number {
  const tip = Math.min(
    ...(["ball", "toe"] as const).map((part) => heightOf(from, name, limbJoint(side, part))),
  );
  return heightOf(from, name, limbJoint(side, "heel")) - tip > 0.015 ? 0.03 : 0.02;
}

/** The toe this far over its heel, the ball in proportion, and the foot on the ground. */
function toeOver(into: Walk, name: string, side: Side, legs: number): Walk {
  const over = (part: "ball" | "toe") =>
    heightOf(into, name, limbJoint(side, part)) - heightOf(into, name, limbJoint(side, "heel"));
  const by = legs - over("toe");
  const ball = legs * BALL_OF_TOE - over("ball");
  const tip = moveMarks(into, name, [limbJoint(side, "toe")], { up: by });
  const rolled = moveMarks(tip, name, [limbJoint(side, "ball")], { up: ball });
  return kneesSolved(into, standing(rolled, name, side, 0), name);
}

const BALL_OF_TOE = 0.72; // of the way from heel to toe

/** The foot pitched by so many degrees, toe up, and on the ground. */
function pitched(into: Walk, name: string, side: Side, degrees: number): Walk {
  const ahead = (part: "heel" | "toe") => alongOf(into, name, limbJoint(side, part));
  const slope = Math.tan((degrees * Math.PI) / 180);
  return toeOver(into, name, side, (ahead("toe") - ahead("heel")) * slope);
}

/** Feet that land, lie or leave otherwise than feet do. */
export const ROLL_FAULTS: readonly Fault[] = [
  {
    name: "foot that lands toe first",
    check: "foot-roll",
    level: "may-show",
    panels: ["@ contact"],
    foot: true,
    brings: { symmetry: ONE_STEP },
    // The toe stands 10 % over its heel and is to stay above 2 %.
    put: (into, side, times) =>
      atBoth(into, `${side} contact`, (rest, name) =>
        toeOver(rest, name, side, 0.1 - times * 0.08),
      ),
  },
  {
    name: "foot that is not flat at its passing",
    check: "foot-roll",
    level: "may-show",
    panels: ["@ passing"],
    foot: true,
    brings: {
      snap: "a foot that is turned up under an ankle that stays is lower between the poses, which stretches its leg",
    },
    put: (into, side, times) => pitched(into, `${side} passing`, side, times * 10),
  },
  {
    name: "heel that is up at its passing",
    check: "foot-roll",
    level: "may-show",
    panels: ["@ passing"],
    foot: true,
    brings: { symmetry: ONE_STEP },
    put: (into, side, times) => pitched(into, `${side} passing`, side, -times * 10),
  },
  {
    name: "foot that is not flat at its down",
    check: "foot-roll",
    level: "may-show",
    panels: ["@ down"],
    yardsticks: ["trade"],
    foot: true,
    put: (into, side, times) => pitched(into, `${side} down`, side, times * 10),
  },
  {
    name: "foot that leaves toe first",
    check: "foot-roll",
    level: "may-show",
    panels: ["@ up"],
    foot: true,
    brings: {
      reach: "a heel that is put down where it is up already takes the ankle away from its hip",
    },
    put: (into, side, times) => toeOver(into, `${side} up`, side, times * 0.02),
  },
];

const apartOf = (from: Walk, name: string, side: Side) =>
  alongOf(from, name, `${side}-ankle`) - alongOf(from, name, `${otherSide(side)}-ankle`);

/** Poses drawn as another than they are labelled. */
export const SHAPE_FAULTS: readonly Fault[] = [
  {
    name: "contact drawn as a passing",
    check: "pose-order",
    level: "may-show",
    panels: ["@ contact"],
    foot: true,
    fixed: 0, // what is drawn there is another pose, and the step would lack the one that its label names
    brings: {
      float: "at a contact both feet are asked to bear, and one is in the air",
      "weight-side": "feet that are side by side have no hips between them",
      tempo: "a step between feet side by side has no length",
      symmetry: ONE_STEP,
      snap: "a leg that has straightened as it stands is drawn up at once, where it would still push",
    },
    put: (into, side, times) =>
      atBoth(into, `${side} contact`, (rest, name) => crossed(rest, name, side, 0.05 / times)),
  },
  {
    name: "passing drawn as a contact",
    check: "pose-order",
    level: "may-show",
    panels: ["@ passing"],
    foot: true,
    fixed: 0, // the same
    brings: {
      reach: "the foot that swings is put a step ahead of hips that stayed",
      "limb-length": "the foot that swings is put a step ahead of hips that stayed",
      clearance: "the foot that swings lies where it will land",
      symmetry: ONE_STEP,
    },
    put: (into, side, times) => strided(into, `${side} passing`, side, times * 0.05),
  },
];

/** At contact the other foot this far behind the one that lands, and in the air. */
function crossed(into: Walk, name: string, side: Side, apart: number): Walk {
  const other = otherSide(side);
  const ahead = apartOf(into, name, side) - apart;
  return moveFoot(into, name, other, { ahead, up: 0.1 - lowestOf(into, name, other) });
}

/** At passing the other foot ahead of the one that carries, wider than at either contact, its toe up. */
function strided(into: Walk, name: string, side: Side, wider: number): Walk {
  const other = otherSide(side);
  const widest = Math.max(
    ...[`${side} contact`, nextOf(into, side)].map((one) => Math.abs(apartOf(into, one, side))),
  );
  const ahead = widest + wider + apartOf(into, name, side);
  return toeOver(moveFoot(into, name, other, { ahead }), name, other, 0.1);
}
