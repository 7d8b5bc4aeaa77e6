import { limbJoint, otherSide, type Side } from "../../lib/body";
import type { Walk } from "../../lib/gait";
import type { StepPose } from "../../lib/motion";
import {
  alongOf,
  atBoth,
  carry,
  hipsUp,
  moveAll,
  moveMarks,
  nextOf,
  panelOf,
} from "./seeded/posed";
import type { Fault } from "./seeding";
import { type PanelName, retime, without, withPanel } from "./walk";

/** How far a mark of the foot that carries has come from a pose to its passing, leg lengths. */
function travel(from: Walk, side: Side, joint: "ball" | "heel", pose: "contact" | "down"): number {
  const mark = limbJoint(side, joint);
  return alongOf(from, `${side} passing`, mark) - alongOf(from, `${side} ${pose}`, mark);
}

/** One mark of a planted foot put down elsewhere at its passing. */
export const MARK_SLIPS: readonly Fault[] = [
  {
    name: "ball that slips",
    check: "slide",
    level: "shows",
    panels: ["@ down", "@ passing"],
    foot: true,
    put(into, side, times) {
      const ahead = times * 0.05 - travel(into, side, "ball", "down");
      return moveMarks(into, `${side} passing`, [limbJoint(side, "ball")], { ahead });
    },
  },
  {
    name: "heel that slips",
    check: "slide",
    level: "shows",
    panels: ["@ contact", "@ passing"],
    foot: true,
    put(into, side, times) {
      const ahead = times * 0.05 - travel(into, side, "heel", "contact");
      return moveMarks(into, `${side} passing`, [limbJoint(side, "heel")], { ahead });
    },
  },
];

const ONE_STEP = "one step that is drawn otherwise is no mirror image of the other";
const SLID =
  "the drawing stands elsewhere on the ground as a whole, so what is read between two poses changes with it";

/** The whole drawing put elsewhere on the ground: the foot that carries slides under it. */
export const SLIDES: readonly Fault[] = [
  {
    name: "passing that stands too far ahead",
    check: "slide",
    level: "shows",
    panels: ["@ passing"],
    onlyLast: true,
    foot: true,
    brings: {
      hitch: SLID,
      symmetry:
        "a step is as long as its feet stand apart at their passings, and one stands elsewhere",
    },
    put(into, side, times) {
      const ahead = times * 0.05 - travel(into, side, "ball", "down");
      return moveAll(into, `${side} passing`, { ahead });
    },
  },
  {
    name: "foot that slides back",
    check: "slide",
    level: "shows",
    panels: ["@ passing"],
    onlyLast: true,
    foot: true,
    brings: { hitch: SLID },
    put(into, side, times) {
      const ahead = -times * 0.02 - travel(into, side, "heel", "contact");
      return moveAll(into, `${side} passing`, { ahead });
    },
  },
];

/** Trade's limits are 0, so "its threshold" is the least that can be told: ± of the difference of two hips. */
const LEAST_TOLD = 0.0055;

/** The body lowered at a pose until it stands so far over another one. */
function lowered(into: Walk, name: PanelName, side: Side, by: StepPose, over: number): Walk {
  const now = hipsUp(into, name) - hipsUp(into, `${side} ${by}`);
  return atBoth(into, name, (rest, one) => carry(rest, one, { up: over - now }));
}

const RANGE = "the body sinks where it does not in the other poses: the range of its heights grows";

export const HEIGHTS: readonly Fault[] = [
  {
    name: "contact under the down",
    check: "hip-order",
    level: "shows",
    panels: ["@ contact", "@ down"],
    yardsticks: ["trade"],
    // Half of a limit of 0 is the other side of it.
    put: (into, side, times) =>
      lowered(into, `${side} contact`, side, "down", -signed(times) * LEAST_TOLD),
  },
  {
    name: "passing under the contact",
    check: "hip-order",
    level: "shows",
    panels: ["@ contact", "@ passing"],
    yardsticks: ["trade"],
    put: (into, side, times) =>
      lowered(into, `${side} passing`, side, "contact", -signed(times) * LEAST_TOLD),
  },
  {
    name: "up that is none",
    check: "hip-order",
    level: "shows",
    panels: ["@ passing", "@ up"],
    yardsticks: ["trade"],
    put: (into, side, times) =>
      lowered(into, `${side} up`, side, "passing", -signed(times) * LEAST_TOLD),
  },
  {
    name: "body that sinks at its passing",
    check: "hip-order",
    level: "shows",
    panels: ["@ contact", "@ passing"],
    yardsticks: ["life"],
    brings: {
      hitch: "a body that sinks between poses that stand higher sinks twice",
      symmetry: ONE_STEP,
    },
    finest: 0.0025, // two hips by pencil are good to 0.5 %, which is all there is between once and twice
    put: (into, side, times) => lowered(into, `${side} passing`, side, "contact", -times * 0.005),
  },
  {
    name: "contact far under the down",
    check: "hip-order",
    level: "shows",
    panels: ["@ contact", "@ down"],
    yardsticks: ["life"],
    brings: { "hip-range": RANGE, symmetry: ONE_STEP },
    put: (into, side, times) => lowered(into, `${side} contact`, side, "down", -times * 0.02),
  },
];

/** 2 → 2, 0.5 → −0.5. */
function signed(times: number): number {
  return times < 1 ? -times : times;
}

const MOVED_IN_TIME = "a pose that comes at another time moves otherwise between its neighbours";

/** Poses at the wrong time. Whole frames: a size rounds down to them. */
export const GAPS: readonly Fault[] = [
  {
    name: "passing late by two exposures",
    check: "gaps",
    level: "may-show",
    panels: ["@ down", "@ passing", "@ up"],
    yardsticks: ["trade"],
    brings: { hitch: MOVED_IN_TIME, snap: MOVED_IN_TIME },
    put(into, side, times) {
      const by = Math.floor(times * into.exposure + 1e-9);
      return into.panels.some(({ id }) => id === `${side} up`)
        ? later(into, `${side} passing`, by)
        : into;
    },
  },
  {
    name: "passing far from the middle of its span",
    check: "gaps",
    level: "shows",
    panels: ["next"],
    onlyLast: true,
    yardsticks: ["life"],
    brings: { hitch: MOVED_IN_TIME, snap: MOVED_IN_TIME },
    // Life's span is 0.55 ± 0.15, so twice that is 0.85 and half of it 0.625.
    put(into, side, times) {
      const from = panelOf(into, `${side} contact`).frame;
      const length = panelOf(into, nextOf(into, side)).frame - from;
      const to = from + Math.floor((0.55 + times * 0.15) * length);
      return retime(without(into, `${side} up`), `${side} passing`, to);
    },
  },
  {
    name: "steps of unequal time",
    check: "gaps",
    level: "shows",
    panels: ["end"],
    onlyLast: true,
    sideOf: () => null,
    brings: {
      tempo: "a step that takes longer on the spot lets the ground pass for longer: it skates",
      hitch: MOVED_IN_TIME,
      snap: MOVED_IN_TIME,
      loop: MOVED_IN_TIME,
    },
    put(into, side, times) {
      const other = nextOf(into, otherSide(side));
      const frames = panelOf(into, other).frame - panelOf(into, `${otherSide(side)} contact`).frame;
      const index = times * 0.15;
      return stretched(into, side, Math.round((frames * (2 + index)) / (2 - index)));
    },
  },
];

function later(into: Walk, name: PanelName, by: number): Walk {
  return by === 0 ? into : retime(into, name, panelOf(into, name).frame + by);
}

/** A side's step drawn out to so many frames, its poses at the shares they had; what follows comes later. */
export function stretched(into: Walk, side: Side, frames: number): Walk {
  const from = panelOf(into, `${side} contact`).frame;
  const to = panelOf(into, nextOf(into, side)).frame;
  const late = into.panels.reduce<Walk>((rest, { id, frame }) => {
    if (frame <= from) return rest;
    const at = frame >= to ? frame - to + frames : ((frame - from) * frames) / (to - from);
    return retime(rest, id as PanelName, from + Math.round(at));
  }, into);
  const order = into.panels.map(({ id }) => id);
  const panels = late.panels.toSorted(
    (a, b) => a.frame - b.frame || order.indexOf(a.id) - order.indexOf(b.id),
  );
  return { ...late, panels };
}

/** Poses that are not drawn: there is no half of such a fault. */
export const MISSING: readonly Fault[] = (["contact", "down", "passing", "up"] as const).map(
  (pose) => ({
    name: `step without its ${pose}`,
    check: "missing-pose",
    level: pose === "contact" || pose === "passing" ? "shows" : "may-show",
    panels: ["next"],
    onlyLast: true,
    whole: true,
    yardsticks: pose === "up" ? ["trade"] : ["trade", "life"],
    // The loop's last contact stands in for its first, so only the contact in the middle can be missing.
    fits: (into, side) => pose !== "contact" || nextOf(into, side) === "end",
    put: (into, side, times) => (times < 1 ? into : without(into, `${side} ${pose}`)),
  }),
);

const MISLED = "a pose is judged by the label and the side it has, until they are put right";
const BY_LABEL = {
  "hip-order": MISLED,
  "weight-side": MISLED,
  "weight-front": MISLED,
  float: MISLED,
  "foot-roll": MISLED,
  clearance: MISLED,
  gaps: MISLED,
  slide: MISLED,
  symmetry: MISLED,
  hitch: MISLED,
  snap: MISLED,
  sides: MISLED,
} as const;

/** Labels that do not say what is drawn, or whose. Whole, too. */
export const LABELS: readonly Fault[] = [
  {
    name: "down and passing that changed labels",
    check: "pose-order",
    level: "may-show",
    panels: ["@ down", "@ passing"],
    whole: true,
    brings: BY_LABEL,
    put: (into, side, times) =>
      times < 1 ? into : relabelled(into, `${side} down`, `${side} passing`),
  },
  {
    name: "passing on the other foot",
    check: "pose-order",
    level: "may-show",
    panels: ["@ passing"],
    whole: true,
    brings: BY_LABEL,
    put: (into, side, times) =>
      times < 1 ? into : withPanel(into, `${side} passing`, { weightOn: otherSide(side) }),
  },
];

function relabelled(into: Walk, one: PanelName, other: PanelName): Walk {
  const [first, second] = [panelOf(into, one).pose, panelOf(into, other).pose];
  return withPanel(withPanel(into, one, { pose: second }), other, { pose: first });
}
