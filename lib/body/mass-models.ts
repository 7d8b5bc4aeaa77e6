import { gathered } from "../gathered";
import { SIDES, type Side } from "./joint";
import type { Landmark } from "./landmark";

/** Whose masses: women's, men's or their mean by de Leva; or Dempster's as Winter tables them. */
export const MASS_MODELS = ["mean", "female", "male", "dempster"] as const;
export type MassModel = (typeof MASS_MODELS)[number];

/** The middle between both of a pair, or the one that is there. */
export type SegmentEnd = Landmark | "mid-hips" | "mid-shoulders";

/** A line along which a part's mass is centred: `at` is a share of it from its first end. */
export interface MassLine {
  readonly ends: readonly [SegmentEnd, SegmentEnd];
  readonly at: number;
}

/** A part of the body: its share of the mass, and the lines that tell where, the best first. */
export interface BodyPart {
  readonly name: string;
  readonly mass: number;
  readonly lines: readonly MassLine[];
}

type Pair = readonly [female: number, male: number];
type Choose = (pair: Pair) => number;

const CHOOSE: Readonly<Record<Exclude<MassModel, "dempster">, Choose>> = {
  female: ([female]) => female,
  male: ([, male]) => male,
  mean: ([female, male]) => (female + male) / 2,
};

const line = (from: SegmentEnd, to: SegmentEnd, at: number): MassLine => ({ ends: [from, to], at });
/** All of it at one point: for a part whose own ends are not among the marks. */
const point = (here: SegmentEnd): MassLine => line(here, here, 0);

/**
 * Source: de Leva (1996), J Biomech 29:1223, table 4. Shares of body mass, and of the length from the first
 * end. A head without its own ends is put at the head's mark, and a hand at its wrist.
 */
function deLeva(of: Choose): readonly BodyPart[] {
  const limbs = (side: Side): BodyPart[] => [
    {
      name: `${side} upper arm`,
      mass: of([0.0255, 0.0271]),
      lines: [line(`${side}-shoulder`, `${side}-elbow`, of([0.5754, 0.5772]))],
    },
    {
      name: `${side} forearm`,
      mass: of([0.0138, 0.0162]),
      lines: [line(`${side}-elbow`, `${side}-wrist`, of([0.4559, 0.4574]))],
    },
    {
      name: `${side} hand`,
      mass: of([0.0056, 0.0061]),
      lines: [line(`${side}-wrist`, `${side}-knuckle`, of([0.7474, 0.79])), point(`${side}-wrist`)],
    },
    {
      name: `${side} thigh`,
      mass: of([0.1478, 0.1416]),
      lines: [line(`${side}-hip`, `${side}-knee`, of([0.3612, 0.4095]))],
    },
    {
      name: `${side} shank`,
      mass: of([0.0481, 0.0433]),
      lines: [line(`${side}-knee`, `${side}-ankle`, of([0.4352, 0.4395]))],
    },
    {
      name: `${side} foot`,
      mass: of([0.0129, 0.0137]),
      lines: [line(`${side}-heel`, `${side}-toe`, of([0.4014, 0.4415]))],
    },
  ];
  return [
    {
      name: "head",
      mass: of([0.0668, 0.0694]),
      lines: [line("vertex", "mid-gonion", of([0.5894, 0.5976])), point("head")],
    },
    {
      name: "trunk",
      mass: of([0.4257, 0.4346]),
      lines: [
        line("suprasternale", "mid-hips", of([0.4151, 0.4486])),
        line("mid-shoulders", "mid-hips", of([0.3782, 0.431])),
        line("neck", "mid-hips", of([0.4964, 0.5138])),
      ],
    },
    ...gathered(SIDES, limbs),
  ];
}

/**
 * Source: Dempster, as tabled by Winter (2009), Biomechanics and Motor Control of Human Movement, table
 * 4.1. The head with the neck is at the ear, or where that is not marked at the head's mark.
 */
function dempster(): readonly BodyPart[] {
  const limbs = (side: Side): BodyPart[] => [
    {
      name: `${side} upper arm`,
      mass: 0.028,
      lines: [line(`${side}-shoulder`, `${side}-elbow`, 0.436)],
    },
    {
      name: `${side} forearm`,
      mass: 0.016,
      lines: [line(`${side}-elbow`, `${side}-wrist`, 0.43)],
    },
    {
      name: `${side} hand`,
      mass: 0.006,
      lines: [line(`${side}-wrist`, `${side}-knuckle`, 0.506), point(`${side}-wrist`)],
    },
    { name: `${side} thigh`, mass: 0.1, lines: [line(`${side}-hip`, `${side}-knee`, 0.433)] },
    { name: `${side} shank`, mass: 0.0465, lines: [line(`${side}-knee`, `${side}-ankle`, 0.433)] },
    { name: `${side} foot`, mass: 0.0145, lines: [line(`${side}-ankle`, `${side}-ball`, 0.5)] },
  ];
  return [
    { name: "head", mass: 0.081, lines: [point("ear-canal"), point("head")] },
    {
      name: "trunk",
      mass: 0.497,
      lines: [line("mid-hips", "mid-shoulders", 0.5), line("mid-hips", "neck", 0.5)],
    },
    ...gathered(SIDES, limbs),
  ];
}

/** Every part of the body by each model, from the head down. Masses add up to 1, to a ten-thousandth. */
export const BODY_PARTS: Readonly<Record<MassModel, readonly BodyPart[]>> = {
  mean: deLeva(CHOOSE.mean),
  female: deLeva(CHOOSE.female),
  male: deLeva(CHOOSE.male),
  dempster: dempster(),
};
