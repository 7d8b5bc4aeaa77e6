import { type JointName, LIMB_JOINTS, limbJoint, type Side } from "../../lib/body";
import type { Walk } from "../../lib/gait";
import { acrossOf, alongOf, carry, heightOf, hipsUp, moveMarks, nextOf } from "./seeded/posed";
import type { Fault } from "./seeding";

type Part = "hip" | "knee" | "ankle";

const spot = (from: Walk, name: string, side: Side, part: Part) => ({
  x: alongOf(from, name, limbJoint(side, part)),
  y: heightOf(from, name, limbJoint(side, part)),
});

/** How long a bone of the side view is, leg lengths. */
function boneIn(from: Walk, name: string, side: Side, [one, other]: readonly [Part, Part]): number {
  const [a, b] = [spot(from, name, side, one), spot(from, name, side, other)];
  return Math.hypot(a.x - b.x, a.y - b.y);
}

/** How long it is on the stand, or else in the middle of all poses. */
function boneOf(from: Walk, side: Side, ends: readonly [Part, Part]): number {
  const stand = from.panels.find(({ pose }) => pose === "stand");
  if (stand !== undefined) return boneIn(from, stand.id, side, ends);
  const all = from.panels.map(({ id }) => boneIn(from, id, side, ends)).toSorted((a, b) => a - b);
  return all[Math.floor(all.length / 2)] ?? Number.NaN;
}

/** The knee put there, in the side view's measure, and as high in the front view. */
function kneeAt(into: Walk, name: string, side: Side, to: { x: number; y: number }): Walk {
  const knee = spot(into, name, side, "knee");
  const by = { ahead: to.x - knee.x, up: to.y - knee.y };
  return moveMarks(into, name, [limbJoint(side, "knee")], by);
}

/** The knee moved along the shank until that is longer by a share; the thigh is shorter by as much. */
function longShank(into: Walk, name: string, side: Side, share: number): Walk {
  const [knee, ankle] = [spot(into, name, side, "knee"), spot(into, name, side, "ankle")];
  const long = boneOf(into, side, ["knee", "ankle"]) * (1 + share);
  const by = long / boneIn(into, name, side, ["knee", "ankle"]);
  const to = { x: ankle.x + (knee.x - ankle.x) * by, y: ankle.y + (knee.y - ankle.y) * by };
  return kneeAt(into, name, side, to);
}

/** The knee this far past straight, on the middle between hip and ankle. */
function bentBack(into: Walk, name: string, side: Side, degrees: number): Walk {
  const [hip, ankle] = [spot(into, name, side, "hip"), spot(into, name, side, "ankle")];
  const aside = Math.tan((degrees * Math.PI) / 360) / 2;
  return kneeAt(into, name, side, {
    x: (hip.x + ankle.x) / 2 - (hip.y - ankle.y) * aside,
    y: (hip.y + ankle.y) / 2 + (hip.x - ankle.x) * aside,
  });
}

/** The body raised until the standing leg is drawn longer than its bones by a share. */
function overreached(into: Walk, name: string, side: Side, share: number): Walk {
  const [hip, ankle] = [spot(into, name, side, "hip"), spot(into, name, side, "ankle")];
  const bones = boneOf(into, side, ["hip", "knee"]) + boneOf(into, side, ["knee", "ankle"]);
  const high = Math.sqrt((bones * (1 + share)) ** 2 - (hip.x - ankle.x) ** 2);
  return carry(into, name, { up: high - (hip.y - ankle.y) });
}

/** The names of a step's poses, the contact that ends it among them. */
export const stepOf = (from: Walk, side: Side): readonly string[] =>
  [`${side} contact`, `${side} down`, `${side} passing`, `${side} up`, nextOf(from, side)].filter(
    (name) => from.panels.some(({ id }) => id === name),
  );

/** The body lowered at the down until the step's hips sink and rise by so much. */
function bouncing(into: Walk, side: Side, legs: number): Walk {
  const highest = Math.max(...stepOf(into, side).map((name) => hipsUp(into, name)));
  const name = `${side} down`;
  return carry(into, name, { up: highest - legs - hipsUp(into, name) });
}

/** The step's bodies lowered toward the lowest, until they sink and rise by no more than so much. */
function level(into: Walk, side: Side, legs: number): Walk {
  const heights = stepOf(into, side).map((name) => ({ name, up: hipsUp(into, name) }));
  const low = Math.min(...heights.map(({ up }) => up));
  const range = Math.max(...heights.map(({ up }) => up)) - low;
  const share = Math.min(1, legs / range);
  return heights.reduce<Walk>(
    (rest, { name, up }) => carry(rest, name, { up: (share - 1) * (up - low) }),
    into,
  );
}

/** Left and right leg of a pose under each other's names, in both views. */
function swapped(into: Walk, name: string): Walk {
  const legs = LIMB_JOINTS.filter((part) => !["shoulder", "elbow", "wrist"].includes(part));
  return legs.reduce<Walk>((rest, part) => {
    const [left, right] = [limbJoint("left", part), limbJoint("right", part)];
    const moved = moveTo(rest, name, left, placeOf(into, name, right));
    return moveTo(moved, name, right, placeOf(into, name, left));
  }, into);
}

const placeOf = (from: Walk, name: string, joint: JointName) => ({
  along: alongOf(from, name, joint),
  up: heightOf(from, name, joint),
  across: acrossOf(from, name, joint),
});

function moveTo(into: Walk, name: string, joint: JointName, to: ReturnType<typeof placeOf>): Walk {
  const now = placeOf(into, name, joint);
  const by = { ahead: to.along - now.along, up: to.up - now.up, right: to.across - now.across };
  return moveMarks(into, name, [joint], by);
}

const RANGE = 0.03; // leg lengths that people's hips rise and sink within a step
const MOVES = "a pose that is drawn otherwise moves otherwise between its neighbours";
const ONE_SIDE = "one step that is drawn otherwise is no mirror image of the other";
const READ_WRONG = "a leg is read under the other's name";
const KNEE_ALONE = "a knee that is moved by itself changes the length of thigh and shank";

/** Bodies whose limbs, heights or names do not agree with the rest of the walk. */
export const BODY_FAULTS: readonly Fault[] = [
  {
    name: "hips that bounce",
    check: "hip-range",
    level: "shows",
    panels: ["@ contact", "@ down", "@ passing", "@ up"],
    within: true,
    brings: { hitch: MOVES, snap: MOVES, symmetry: ONE_SIDE },
    put: (into, side, times) => bouncing(into, side, times * 0.1),
  },
  {
    name: "flat hips",
    check: "hip-range",
    level: "may-show",
    panels: ["@ contact", "@ down", "@ passing", "@ up"],
    within: true,
    brings: {
      symmetry: ONE_SIDE,
      hitch: MOVES,
      "hip-order": "hips that are level stand in no order",
      loop: "a step that is lowered begins or ends the loop, and its other end is not",
    },
    put: (into, side, times) => level(into, side, Math.max(0, RANGE - times * (RANGE - 0.01))),
  },
  {
    name: "long shank",
    check: "limb-length",
    level: "shows",
    panels: ["@ passing"],
    brings: { snap: MOVES, symmetry: ONE_SIDE },
    put: (into, side, times) => longShank(into, `${side} passing`, side, times * 0.15),
  },
  {
    name: "leg that does not reach",
    check: "reach",
    level: "may-show",
    panels: ["@ up"],
    // Without a stand the bones' lengths are medians of marks that stray by 2.9 % of them.
    fits: (into) => into.panels.some(({ pose }) => pose === "stand"),
    finest: 0.001, // hip and ankle by pencil are good to as much as passes
    brings: {
      "hip-range": "a body that is raised so far at its up bounces, too",
      symmetry: ONE_SIDE,
      hitch: MOVES,
      snap: MOVES,
    },
    put: (into, side, times) => overreached(into, `${side} up`, side, times * 0.01),
  },
  {
    name: "knee that bends back",
    check: "knee",
    level: "shows",
    panels: ["@ passing"],
    brings: { "limb-length": KNEE_ALONE, snap: MOVES, symmetry: ONE_SIDE },
    put: (into, side, times) => bentBack(into, `${side} passing`, side, times * 5),
  },
  {
    name: "views that disagree",
    check: "views",
    level: "may-show",
    panels: ["@ passing"],
    brings: { "limb-length": "from ahead a bone is longer than it is from the side" },
    put(into, side, times) {
      const joints = [limbJoint(side, "knee")];
      const up = times * 0.1;
      const both = moveMarks(into, `${side} passing`, joints, { up });
      return withSideOf(both, into, `${side} passing`);
    },
  },
  {
    name: "legs under each other's names",
    check: "sides",
    level: "shows",
    panels: ["@ passing"],
    onlyLast: true,
    sideOf: () => null,
    whole: true,
    brings: {
      float: READ_WRONG,
      sink: READ_WRONG,
      slide: READ_WRONG,
      "weight-side": READ_WRONG,
      "weight-front": READ_WRONG,
      "foot-roll": READ_WRONG,
      clearance: READ_WRONG,
      hitch: READ_WRONG,
      snap: READ_WRONG,
      symmetry: READ_WRONG,
      tempo: READ_WRONG,
      width: READ_WRONG,
      "limb-length": READ_WRONG,
      reach: READ_WRONG,
    },
    put: (into, side, times) => (times < 1 ? into : swapped(into, `${side} passing`)),
  },
];

/** The walk with a panel's side view as another has it. */
function withSideOf(into: Walk, as: Walk, name: string): Walk {
  const side = as.panels.find(({ id }) => id === name)?.marks.side ?? {};
  const panels = into.panels.map((panel) =>
    panel.id === name ? { ...panel, marks: { ...panel.marks, side } } : panel,
  );
  return { ...into, panels };
}
