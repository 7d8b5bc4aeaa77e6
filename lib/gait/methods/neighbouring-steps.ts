import type { Unit } from "../finding";
import type { Grade, MethodLimit } from "../method";

/** How far a reading may lie from the pattern step's, worst first; 0.95 of neighbours are nearer than `may-show`. */
export interface Nearness {
  readonly grades: readonly Grade[];
  readonly unit: Unit;
  readonly source: string;
}

const POSES =
  "neighbouring steps in the poses of six captured walks by five people, 22 pairs: 95 % are nearer than the first limit, all but the rarest nearer than the second";
const CLIPS =
  "neighbouring steps of 72 captured walks by 15 people: 95 % are nearer than the first limit, all nearer than the second";

/**
 * What two neighbouring steps of one person differ by: 95 in 100 by less than the first number, none by
 * more than the second. A step that differs by more than its like is seen to be another step.
 */
export const NEIGHBOURS = {
  /** Hips over the contact's, leg lengths: down 0.4 to 0.8 %, passing 2.2 to 2.6 %, up 2.1 to 2.9 %; by the widest. */
  hips: near("leg", 0.022, 0.029),
  hipRange: near("leg", 0.021, 0.022),
  /** Hips ahead of the standing ankle at passing. */
  ahead: near("leg", 0.024, 0.03),
  /** Hips shifted toward the standing foot at passing. */
  shift: near("leg", 0.038, 0.041),
  /** Hips moved toward the foot that receives them, contact to passing. */
  move: near("leg", 0.03, 0.037),
  /** Front toe over its heel at contact. */
  landing: near("leg", 0.029, 0.033),
  /** Pitch of the standing foot at passing: 3.0 and 5.4 degrees. */
  flat: near("rad", 0.052, 0.095),
  /** Rear toe over its heel as it leaves. */
  leaving: near("leg", 0.043, 0.049),
  /** Lowest mark of the swinging foot at passing. */
  clearance: near("leg", 0.025, 0.027),
  /** When a pose comes, as a share of the step: down 0.07 to 0.10, passing 0.04, up 0.10 to 0.15. */
  down: near("share", 0.071, 0.097),
  passing: near("share", 0.037, 0.039),
  up: near("share", 0.099, 0.146),
  /** Wrist over wrist at contact, along the walk. */
  arms: near("leg", 0.117, 0.147),
  width: near("leg", 0.077, 0.08),
  /** Symmetry indices. */
  frames: near("share", 0.093, 0.179, CLIPS),
  length: near("share", 0.092, 0.136, CLIPS),
} as const;

/** A check's limits by the yardsticks that go by a step, as its page shows them. */
export function patternLimits(of: string, { grades, unit, source }: Nearness): MethodLimit[] {
  return grades.map((grade) => ({
    of: `${of}, apart from the step it goes by`,
    yardsticks: ["this-walk", "version"],
    fires: "above",
    unit,
    source,
    ...grade,
  }));
}

function near(unit: Unit, most: number, all: number, source = POSES): Nearness {
  return {
    grades: [
      { level: "shows", value: all, tripRate: 0 },
      { level: "may-show", value: most, tripRate: 0.05 },
    ],
    unit,
    source,
  };
}
