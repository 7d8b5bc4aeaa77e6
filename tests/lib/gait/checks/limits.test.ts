import { describe, expect, it } from "vitest";
import type { JointName, LimbJoint } from "../../../../lib/body";
import { type CheckId, reviewWalk, type Walk } from "../../../../lib/gait";
import {
  exchanged,
  lift,
  liftAhead,
  type PanelName,
  push,
  raise,
  shift,
  walk,
  withPanel,
} from "../../../support/walk";

/*
 * Readings a little on either side of a limit, by exact marks: each limit is as large as its method says.
 * The built walk's heights, places and bones are in `support/walk`, in leg lengths.
 */
const exact = walk({ precision: 0 });
const HIPS = ["left-hip", "right-hip"] as const;

/** The gravest level that a check tells of a panel, or null. */
function level(judged: Walk, check: CheckId, panel: PanelName): string | null {
  const { remarks } = reviewWalk(judged, "trade");
  const told = remarks.find((one) => one.check === check && one.panels.includes(panel));
  return told?.level ?? null;
}

function at(from: Walk, name: PanelName, joint: JointName) {
  const mark = from.panels.find(({ id }) => id === name)?.marks.side[joint];
  if (mark === undefined) throw new Error(`no ${joint} on ${name}`);
  return { x: mark.x / 420, y: -mark.y / 420 };
}

/** A bone of both sides drawn longer by a share: its lower end, and what hangs on it, moved along it. */
function longer(
  name: PanelName,
  [upper, lower]: readonly [LimbJoint, LimbJoint],
  hangs: readonly LimbJoint[],
  share: number,
  sides: readonly ("left" | "right")[] = ["left", "right"],
): Walk {
  return sides.reduce((from, side) => {
    const [a, b] = [at(from, name, `${side}-${upper}`), at(from, name, `${side}-${lower}`)];
    const joints = [lower, ...hangs].map((part): JointName => `${side}-${part}`);
    const along = push(from, name, joints, share * (b.x - a.x));
    return lift(along, name, joints, share * (b.y - a.y));
  }, exact);
}

describe("bones", () => {
  const FOOT = ["heel", "ball", "toe"] as const;
  it.each([
    ["shank", ["knee", "ankle"], FOOT, 0.025, null],
    ["shank", ["knee", "ankle"], FOOT, 0.035, "tidy"],
    ["shank", ["knee", "ankle"], FOOT, 0.075, "tidy"],
    ["shank", ["knee", "ankle"], FOOT, 0.085, "may-show"],
    ["shank", ["knee", "ankle"], FOOT, 0.145, "may-show"],
    ["shank", ["knee", "ankle"], FOOT, 0.155, "shows"],
    ["thigh", ["knee", "hip"], [], 0.025, null],
    ["thigh", ["knee", "hip"], [], 0.035, "tidy"],
    ["thigh", ["knee", "hip"], [], 0.085, "may-show"],
    ["thigh", ["knee", "hip"], [], 0.155, "shows"],
    ["upper arm", ["shoulder", "elbow"], ["wrist"], 0.045, null],
    ["upper arm", ["shoulder", "elbow"], ["wrist"], 0.055, "tidy"],
    ["upper arm", ["shoulder", "elbow"], ["wrist"], 0.105, "may-show"],
    ["upper arm", ["shoulder", "elbow"], ["wrist"], 0.205, "shows"],
    ["forearm", ["elbow", "wrist"], [], 0.095, null],
    ["forearm", ["elbow", "wrist"], [], 0.105, "tidy"],
    ["forearm", ["elbow", "wrist"], [], 0.155, "may-show"],
    ["forearm", ["elbow", "wrist"], [], 0.255, "shows"],
  ] as const)("%s %j with %j longer by %f: %s", (_, ends, hangs, share, expected) => {
    expect(level(longer("left up", ends, hangs, share), "limb-length", "left up")).toBe(expected);
  });

  it.each([
    [0.07, null], // 6.8 % of the mean
    [0.09, "may-show"], // 8.6 %
  ])("of a pair that differ by %f of the shorter: %s", (share, expected) => {
    const unlike = longer("left up", ["elbow", "wrist"], [], share, ["left"]);
    expect(level(unlike, "limb-length", "left up")).toBe(expected);
  });

  it.each([
    [0.005, null],
    [0.018, "may-show"],
  ])("are out of reach from 1 % of a leg on: %f, %s", (beyond, expected) => {
    const [hip, ankle] = [at(exact, "left up", "left-hip"), at(exact, "left up", "left-ankle")];
    const apart = Math.hypot(hip.x - ankle.x, hip.y - ankle.y);
    const by = (0.92 + beyond) / apart - 1; // thigh and shank are 0.46 each
    const far = push(exact, "left up", ["left-hip"], by * (hip.x - ankle.x));
    const judged = lift(far, "left up", ["left-hip"], by * (hip.y - ankle.y));
    expect(level(judged, "reach", "left up")).toBe(expected);
  });
});

describe("the hips' range", () => {
  // Contact 0.93, down 0.91, passing 0.95, up 0.96: 5 % as built.
  it.each([
    [0.079, null],
    [0.081, "may-show"],
    [0.099, "may-show"],
    [0.101, "shows"],
  ])("of %f of a leg: %s", (range, expected) => {
    expect(level(raise(exact, "left up", range - 0.05), "hip-range", "left up")).toBe(expected);
  });

  it.each([
    [0.011, null],
    [0.009, "may-show"],
    [0.006, "may-show"],
    [0.004, "shows"],
  ])("of no more than %f of a leg: %s", (range, expected) => {
    const level0 = raise(raise(exact, "left down", 0.02), "left passing", -0.02);
    const judged = raise(level0, "left up", range - 0.03);
    expect(level(judged, "hip-range", "left up")).toBe(expected);
  });
});

describe("the hips from ahead", () => {
  // At the left passing they are 2.5 % to the left of the middle, the left ankle 5.5 %.
  const passing = (toRight: number) => shift(exact, "left passing", HIPS, toRight);
  const both = (z: number) => shift(passing(0.025 + z), "left contact", HIPS, z);

  it.each([
    [0.079, null],
    [0.081, "may-show"],
  ])("%f of a leg beside the ankle: %s", (beside, expected) => {
    expect(level(passing(-0.03 - beside), "weight-front", "left passing")).toBe(expected);
  });

  it.each([
    [0.009, null],
    [0.011, "may-show"],
    [0.019, "may-show"],
    [0.021, "shows"],
  ])("shifted away by %f of a leg: %s", (away, expected) => {
    expect(level(both(away), "weight-front", "left passing")).toBe(expected);
  });

  it.each([
    [0.009, null],
    [0.011, "may-show"],
  ])("moving away by %f of a leg after the contact: %s", (away, expected) => {
    const judged = shift(exact, "left contact", HIPS, -0.025 - away);
    expect(level(judged, "weight-front", "left contact")).toBe(expected);
  });
});

describe("the hips between poses", () => {
  it.each([
    [0.004, null],
    [0.006, "may-show"],
  ])("with a second low %f of a leg deep: %s", (deep, expected) => {
    // The next contact stands at 0.93, the up at 0.96.
    expect(level(raise(exact, "left up", -0.03 - deep), "hitch", "left up")).toBe(expected);
  });

  it.each([
    [0.004, null],
    [0.006, "may-show"],
  ])("going back by %f of a leg: %s", (back, expected) => {
    // From down to passing they go a quarter of a step of 0.72.
    const judged = push(exact, "left passing", HIPS, -0.18 - back);
    expect(level(judged, "hitch", "left passing")).toBe(expected);
  });
});

describe("two views of one joint", () => {
  it.each([
    [0.039, null],
    [0.041, "tidy"],
    [0.099, "tidy"],
    [0.101, "may-show"],
  ])("%f of a leg apart: %s", (apart, expected) => {
    const judged = liftAhead(exact, "left up", ["head"], apart);
    expect(level(judged, "views", "left up")).toBe(expected);
  });

  it("say which of them is the higher", () => {
    const judged = liftAhead(exact, "left up", ["head"], 0.2);
    const told = reviewWalk(judged, "trade").remarks.find(({ check }) => check === "views");
    expect(told?.measured.value).toBeCloseTo(-0.2, 9);
    expect(told?.why).toContain("lower from the side than from ahead");
  });
});

describe("a loop", () => {
  it("is closed wherever on the paper its last pose is drawn", () => {
    const joints = Object.keys(exact.panels.at(-1)?.marks.side ?? {}) as JointName[];
    expect(level(push(exact, "end", joints, 0.3), "loop", "end")).toBeNull();
  });
});

describe("names that change places", () => {
  const LEGS = ["knee", "ankle", "heel", "ball", "toe"] as const;
  const saved = (share: number) => {
    const judged = exchanged(exact, "left passing", "side", LEGS, share);
    const told = reviewWalk(judged, "trade").remarks.find(({ check }) => check === "sides");
    return told?.measured.value ?? null;
  };

  it("are told from the side once 2 % of a leg is saved and the label is for it", () => {
    expect(saved(0.5)).toBeNull();
    const told = [0.55, 0.6, 0.65, 0.7].map(saved).filter((value) => value !== null);
    expect(Math.min(...told)).toBeGreaterThan(0.02);
    expect(Math.min(...told)).toBeLessThan(0.06);
  });

  it("are told from ahead, where hips and knees lie apart", () => {
    const judged = exchanged(exact, "left passing", "front", ["hip", "knee"], 1);
    expect(level(judged, "sides", "left passing")).toBe("shows");
  });
});

describe("a pose that is drawn as a contact", () => {
  /** The up drawn as the next contact, its feet wider apart by so much. */
  const asContact = (wider: number) => {
    const contact = exact.panels.find(({ id }) => id === "right contact");
    const up = exact.panels.find(({ id }) => id === "left up");
    if (contact === undefined || up === undefined) throw new Error("the built walk has both");
    const drawn = withPanel(exact, "left up", { marks: contact.marks });
    const foot: JointName[] = ["right-ankle", "right-heel", "right-ball", "right-toe"];
    return push(drawn, "left up", foot, wider);
  };

  it.each([
    [0.04, null],
    [0.06, "may-show"],
  ])("with its feet %f of a leg wider apart: %s", (wider, expected) => {
    expect(level(asContact(wider), "pose-order", "left up")).toBe(expected);
  });
});
