import { limbJoint, otherSide, SIDES, type Side } from "../../lib/body";
import type { Walk } from "../../lib/gait";
import {
  acrossOf,
  alongOf,
  atBoth,
  footOf,
  heightOf,
  moveAll,
  moveFoot,
  moveMarks,
  nextOf,
} from "./seeded/posed";
import type { Fault } from "./seeding";

const BODY_JUMPS = "the body stays while the foot lands elsewhere, so it moves otherwise after it";
const REACHES = "a foot so far from hips that stayed is out of the leg's reach";
const TURNS = "one step that is longer than the other is no mirror image of it";

/** Life's step, leg lengths, and how far its limits are from it. */
const STEP = { life: 0.77, longer: 1.05 - 0.77, shorter: 0.77 - 0.55 } as const;

/** The foot that ends a side's step lands so far ahead of the one that carries it; what follows goes along. */
export function landing(into: Walk, side: Side, length: number): Walk {
  const next = nextOf(into, side);
  const lands = otherSide(side);
  const now =
    alongOf(into, next, `${lands}-heel`) - alongOf(into, `${side} contact`, `${side}-heel`);
  const ahead = length - now;
  const at = into.panels.findIndex(({ id }) => id === next);
  const landed = moveFoot(into, next, lands, { ahead });
  return into.panels.slice(at + 1).reduce((rest, { id }) => moveAll(rest, id, { ahead }), landed);
}

/** Arms of one panel swung so that a side's hand is so far ahead of the other. */
export function swung(into: Walk, name: string, side: Side, legs: number): Walk {
  const middle =
    SIDES.reduce((sum, one) => sum + alongOf(into, name, limbJoint(one, "shoulder")), 0) / 2;
  return SIDES.reduce((rest, one) => {
    const to = middle + (one === side ? legs / 2 : -legs / 2);
    return turned(rest, name, one, to);
  }, into);
}

/** An arm turned about its shoulder as it is, until its wrist is there along the walk. */
function turned(into: Walk, name: string, side: Side, to: number): Walk {
  const at = (part: "shoulder" | "elbow" | "wrist") => ({
    x: alongOf(into, name, limbJoint(side, part)),
    y: heightOf(into, name, limbJoint(side, part)),
  });
  const [shoulder, elbow, wrist] = [at("shoulder"), at("elbow"), at("wrist")];
  const reach = Math.hypot(wrist.x - shoulder.x, wrist.y - shoulder.y);
  const was = Math.atan2(wrist.x - shoulder.x, shoulder.y - wrist.y);
  const by = Math.asin((to - shoulder.x) / reach) - was;
  return [
    { part: "elbow" as const, from: elbow },
    { part: "wrist" as const, from: wrist },
  ].reduce((rest, { part, from }) => {
    const [x, y] = [from.x - shoulder.x, from.y - shoulder.y];
    const ahead = x * Math.cos(by) - y * Math.sin(by) - x;
    const up = x * Math.sin(by) + y * Math.cos(by) - y;
    return moveMarks(rest, name, [limbJoint(side, part)], { ahead, up });
  }, into);
}

/** Every foot on its own line, the two of them so far apart across the walk. */
function straddling(into: Walk, width: number): Walk {
  const feet = into.panels.flatMap(({ id }) =>
    SIDES.map((side) => acrossOf(into, id, `${side}-ankle`)),
  );
  const middle = feet.reduce((sum, one) => sum + one, 0) / feet.length;
  return into.panels.reduce(
    (all, { id }) =>
      SIDES.reduce((rest, side) => {
        const to = middle + (side === "right" ? width / 2 : -width / 2);
        return moveMarks(rest, id, footOf(side), {
          right: to - acrossOf(rest, id, `${side}-ankle`),
        });
      }, all),
    into,
  );
}

const BESIDE = {
  "weight-front": "hips over the middle are far beside feet that stand far apart",
  "limb-length": "legs are drawn longer to feet that stand far apart",
  symmetry: "feet that cross make the swing of the body look turned round",
} as const;

/** Steps, pace, width and arms. */
export const READING_FAULTS: readonly Fault[] = [
  {
    name: "step that is too long",
    check: "tempo",
    level: "may-show",
    panels: ["@ contact", "next"],
    foot: true,
    fixed: 0, // how long a step is, is drawn in every pose of it
    brings: {
      hitch: BODY_JUMPS,
      snap: BODY_JUMPS,
      reach: REACHES,
      "limb-length": REACHES,
      symmetry: TURNS,
      loop: "the last pose has another step than the first",
      "weight-side": "hips that stayed are not over feet that went on",
    },
    put: (into, side, times) => landing(into, side, STEP.life + times * STEP.longer),
  },
  {
    name: "step that is too short",
    check: "tempo",
    level: "may-show",
    panels: ["@ contact", "next"],
    foot: true,
    fixed: 0, // how long a step is, is drawn in every pose of it
    brings: {
      hitch: BODY_JUMPS,
      snap: BODY_JUMPS,
      symmetry: TURNS,
      loop: "the last pose has another step than the first",
      "weight-side": "hips that stayed are past feet that did not go on",
    },
    put: (into, side, times) => landing(into, side, STEP.life - times * STEP.shorter),
  },
  {
    name: "ground that goes by too fast",
    check: "tempo",
    level: "shows",
    panels: ["first", "second"],
    sideOf: () => null,
    foot: true,
    brings: {
      slide: "where all feet skate, each planted foot slides",
      hitch: "where all feet skate, the body gains on them",
    },
    put: (into, _side, times) => faster(into, times * 0.05),
  },
  {
    name: "feet far apart",
    check: "width",
    level: "may-show",
    panels: ["next"],
    brings: BESIDE,
    put: (into, _side, times) => straddling(into, times * 0.25),
  },
  {
    name: "feet that cross",
    check: "width",
    level: "may-show",
    panels: ["next"],
    brings: BESIDE,
    // Life's feet are 11 % of a leg apart, and are to stay 2 %.
    put: (into, _side, times) => straddling(into, 0.11 - times * 0.09),
  },
  {
    name: "arm that swings with its leg",
    check: "opposition",
    level: "may-show",
    panels: ["@ contact"],
    brings: {
      symmetry: "arms that swing otherwise in one step are no mirror image of the other's",
      hitch: "a wrist that is on the other side in one pose alone breaks its arc",
    },
    put: (into, side, times) =>
      atBoth(into, `${side} contact`, (rest, name) => swung(rest, name, side, times * 0.05)),
  },
];

/** The ground goes by faster by a share, by the advance or by the places that panels have. */
function faster(into: Walk, share: number): Walk {
  const panels = into.panels.map((panel) => ({
    ...panel,
    place: panel.place === null ? null : panel.place * (1 + share),
  }));
  return { ...into, panels, advance: into.advance * (1 + share) };
}
