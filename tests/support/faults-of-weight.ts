import { otherSide, type Side } from "../../lib/body";
import type { Walk } from "../../lib/gait";
import { acrossOf, alongOf, atBoth, carry, hipsAcross, hipsAlong, nextOf } from "./seeded/posed";
import type { Fault } from "./seeding";

/** How far the hips are ahead of a side's ankle, leg lengths. */
const aheadOf = (from: Walk, name: string, side: Side) =>
  hipsAlong(from, name) - alongOf(from, name, `${side}-ankle`);

/** The body put so far ahead of the standing ankle at passing. */
function ahead(into: Walk, side: Side, legs: number): Walk {
  const name = `${side} passing`;
  return carry(into, name, { ahead: legs - aheadOf(into, name, side) });
}

const sign = (side: Side) => (side === "right" ? 1 : -1);

/** The body put there across the walk, counted toward the side from a place of the walk's. */
function aside(into: Walk, name: string, side: Side, to: number): Walk {
  return carry(into, name, { right: sign(side) * to - hipsAcross(into, name) });
}

/** The middle between the feet as they stand, counted toward the side. */
function middle(from: Walk, side: Side): number {
  const other = otherSide(side);
  const others = [`${side} contact`, nextOf(from, side)].map((name) =>
    acrossOf(from, name, `${other}-ankle`),
  );
  const mean = others.reduce((sum, z) => sum + z, 0) / others.length;
  return (sign(side) * (acrossOf(from, `${side} passing`, `${side}-ankle`) + mean)) / 2;
}

const LIFE = 0.093; // leg lengths that people's hips are ahead of the standing ankle
const TO_AND_FRO = "the body goes to and fro between its poses";
const STRETCHED = "the foot that stays behind is out of the leg's reach";

const ONE_STEP = "a body that leans in one step alone is no mirror image of the other";
const TOO_FAR_ASIDE = "so far aside the leg that stands has to be longer than it is";

/** Weight that is not over the feet, from the side and from the front. */
export const WEIGHT_FAULTS: readonly Fault[] = [
  {
    name: "weight behind at its passing",
    check: "weight-side",
    level: "shows",
    panels: ["@ passing"],
    brings: { hitch: TO_AND_FRO, symmetry: ONE_STEP },
    put: (into, side, times) => ahead(into, side, LIFE - times * (LIFE - 0.03)),
  },
  {
    name: "weight too far ahead at its passing",
    check: "weight-side",
    level: "shows",
    panels: ["@ passing"],
    brings: { hitch: TO_AND_FRO, reach: STRETCHED, symmetry: ONE_STEP },
    put: (into, side, times) => ahead(into, side, LIFE + times * (0.15 - LIFE)),
  },
  {
    name: "weight past the front foot at its contact",
    check: "weight-side",
    level: "shows",
    panels: ["@ contact"],
    brings: {
      hitch: TO_AND_FRO,
      reach: STRETCHED,
      "limb-length": STRETCHED,
      symmetry: ONE_STEP,
      snap: "the leg behind is drawn straight by hips that go on, and bent before and after",
    },
    put: (into, side, times) =>
      atBoth(into, `${side} contact`, (rest, name) =>
        carry(rest, name, { ahead: -times * aheadOf(rest, name, side) }),
      ),
  },
  {
    name: "weight far beside the foot",
    check: "weight-front",
    level: "may-show",
    panels: ["@ passing"],
    brings: { reach: TOO_FAR_ASIDE, "limb-length": TOO_FAR_ASIDE },
    put(into, side, times) {
      const name = `${side} passing`;
      const ankle = sign(side) * acrossOf(into, name, `${side}-ankle`);
      return aside(into, name, side, ankle + times * 0.08);
    },
  },
  {
    name: "weight on the wrong side",
    check: "weight-front",
    level: "shows",
    panels: ["@ passing"],
    put: (into, side, times) =>
      aside(into, `${side} passing`, side, middle(into, side) - times * 0.02),
  },
  {
    name: "hips that move away from the foot that receives",
    finest: 0.004, // two pairs of hips by pencil stray by as much as lies between once and twice
    check: "weight-front",
    level: "may-show",
    panels: ["@ contact", "@ passing"],
    put(into, side, times) {
      const at = sign(side) * hipsAcross(into, `${side} passing`);
      return atBoth(into, `${side} contact`, (rest, name) =>
        aside(rest, name, side, at + times * 0.01),
      );
    },
  },
];
