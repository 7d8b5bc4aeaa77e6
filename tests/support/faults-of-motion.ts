import { limbJoint, otherSide, type Side } from "../../lib/body";
import type { Walk } from "../../lib/gait";
import {
  alongOf,
  carry,
  heightOf,
  hipsAlong,
  hipsUp,
  moveFoot,
  moveMarks,
  nextOf,
} from "./seeded/posed";
import type { Fault } from "./seeding";

const ARM = ["shoulder", "elbow", "wrist"] as const;
const LIFE = 0.034; // leg lengths that the swing toe stands over the ground at passing

/** The foot that swings at a side's passing, its toe so far over the ground. */
function swinging(into: Walk, side: Side, toe: number): Walk {
  const name = `${side} passing`;
  const swings = otherSide(side);
  const up = toe - heightOf(into, name, limbJoint(swings, "toe"));
  return moveFoot(into, name, swings, { up });
}

/** An arm of the last pose so far ahead of where the first has it, hips laid upon each other. */
function jumping(into: Walk, side: Side, ahead: number): Walk {
  const first = into.panels.find(({ pose }) => pose === "contact")?.id ?? "end";
  const apart = hipsAlong(into, "end") - hipsAlong(into, first);
  return ARM.reduce((rest, part) => {
    const joint = limbJoint(side, part);
    const along = alongOf(into, first, joint) + apart + ahead - alongOf(into, "end", joint);
    const up = heightOf(into, first, joint) - heightOf(into, "end", joint);
    return moveMarks(rest, "end", [joint], { ahead: along, up });
  }, into);
}

const ONE_STEP = "a leg that is drawn otherwise in one step alone is no mirror image of the other";

/** What is seen between the poses, and where the loop begins again. */
export const MOTION_FAULTS: readonly Fault[] = [
  {
    name: "toe that drags",
    check: "clearance",
    level: "shows",
    panels: ["@ passing"],
    sideOf: otherSide,
    foot: true,
    brings: { sink: "a toe that drags is under the ground", symmetry: ONE_STEP },
    put: (into, side, times) => swinging(into, side, -times * 0.02),
  },
  {
    name: "foot that is lifted high",
    check: "clearance",
    level: "may-show",
    panels: ["@ passing"],
    sideOf: otherSide,
    foot: true,
    brings: { symmetry: ONE_STEP },
    put: (into, side, times) => swinging(into, side, LIFE + times * (0.12 - LIFE)),
  },
  {
    name: "open loop",
    check: "loop",
    level: "shows",
    panels: ["first", "end"],
    sideOf: () => null,
    put: (into, side, times) => jumping(into, side, times * 0.1),
  },
  {
    name: "hips that go back",
    check: "hitch",
    level: "may-show",
    panels: ["@ contact", "@ down"],
    finest: 0.001, // two hips by pencil are good to as much as counts
    brings: {
      reach: "hips that stay behind are out of the reach of the leg that has landed",
      symmetry: ONE_STEP,
    },
    put(into, side, times) {
      const now = hipsAlong(into, `${side} down`) - hipsAlong(into, `${side} contact`);
      return carry(into, `${side} down`, { ahead: -times * 0.005 - now });
    },
  },
  {
    name: "hips that sink twice",
    check: "hitch",
    level: "may-show",
    panels: ["@ passing", "@ up"],
    finest: 0.001, // the same
    yardsticks: ["trade"],
    brings: { "hip-order": "an up that is a low is none" },
    put(into, side, times) {
      const about = [`${side} passing`, nextOf(into, side)].map((name) => hipsUp(into, name));
      const to = Math.min(...about) - times * 0.005;
      return carry(into, `${side} up`, { up: to - hipsUp(into, `${side} up`) });
    },
  },
];
