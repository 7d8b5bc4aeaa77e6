import { existsSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { otherSide, type Side } from "../../../../lib/body";
import { reviewWalk, type Walk } from "../../../../lib/gait";
import { type CapturedPose, type CapturedStep, capturedWalk } from "../../../support/captured";

const FOLDER = new URL("../../../../../shared/reference/walks/forceplate/", import.meta.url);
const MARKERS = new URL("bmc_walk1.csv", FOLDER);
const PLATES = new URL("bmc_walk1.json", FOLDER);

interface Event {
  readonly foot: "L" | "R";
  readonly kind: "contact" | "off";
  readonly frame: number;
}

const PER_SECOND = 150;
const LEG = 0.97; // metres: thigh and shank 0.8985, times 1.079
const POSES = { contact: 0, down: 0.07, up: 0.5, passing: 0.6 } as const; // of the step, as people pass them

/**
 * The walk over plates as it would be thumbnailed: a pose at each moment of its three measured steps. Markers sit
 * on the skin, so heel and ball are put down by as much as they are up while their foot is flat.
 */
function measured(): { walk: Walk; events: readonly Event[]; ankleAt: AnkleAt } {
  const { events }: { events: readonly Event[] } = JSON.parse(readFileSync(PLATES, "utf8"));
  const [head = "", ...lines] = readFileSync(MARKERS, "utf8").trim().split("\n");
  const names = head.split(",");
  const rows = lines.map((line) => line.split(",").map(Number));
  const value = (frame: number, name: string) =>
    rows[Math.round(frame) - 1]?.[names.indexOf(name)] ?? Number.NaN;
  const lowest = (name: string) =>
    Math.min(...rows.map((row) => row[names.indexOf(`${name}_y`)] ?? Number.NaN));
  const contacts = events.filter(({ kind }) => kind === "contact");
  const pose = (frame: number): CapturedPose => {
    const points = (["l", "r"] as const).flatMap((side) =>
      (["hip", "knee", "ankle", "heel", "ball"] as const).map((joint): [string, number[]] => {
        const name = `${side}_${joint}`;
        const down = joint === "heel" || joint === "ball" ? lowest(name) : 0;
        const [x, y, z] = ["x", "y", "z"].map((axis) => value(frame, `${name}_${axis}`));
        return [name, [x ?? 0, (y ?? 0) - down, z ?? 0]];
      }),
    );
    const pelvisX = (value(frame, "l_hip_x") + value(frame, "r_hip_x")) / 2;
    return { frame: Math.round(frame), pelvisX, points: Object.fromEntries(points) };
  };
  const steps = contacts.slice(0, -1).map((from, n): CapturedStep => {
    const to = contacts[n + 1]?.frame ?? Number.NaN;
    const at = (share: number) => pose(from.frame + share * (to - from.frame));
    const poses = Object.entries(POSES).map(([name, share]) => [name, at(share)]);
    return {
      leadFoot: from.foot === "L" ? "left" : "right",
      poses: { ...Object.fromEntries(poses), next_contact: at(1) },
    };
  });
  const walk = capturedWalk({ framesPerSecond: PER_SECOND, legLength: LEG, steps });
  return { walk, events, ankleAt: (side, frame) => value(frame, `${side.charAt(0)}_ankle_x`) };
}

type AnkleAt = (side: Side, frame: number) => number;
type Asked = readonly [side: "L" | "R", kind: Event["kind"], nth: number];

describe.skipIf(!existsSync(MARKERS))("a walk over force plates", () => {
  const { walk, events, ankleAt } = existsSync(MARKERS) ? measured() : none();
  const review = reviewWalk(walk, "life");
  const frameOf = (...[side, kind, nth]: Asked) =>
    events.filter((event) => event.foot === side && event.kind === kind)[nth]?.frame ?? Number.NaN;

  it("has both feet down for as long as the plates say", () => {
    // From the second step on the plates have both its contact and the other foot's leaving.
    const measuredShares = [
      (frameOf("L", "off", 0) - frameOf("R", "contact", 0)) / (198.3 - 115.3),
      (frameOf("R", "off", 0) - frameOf("L", "contact", 1)) / (280 - 198.3),
    ];
    for (const [n, truth] of measuredShares.entries()) {
      const read = review.stepReadings[n + 1]?.doubleSupport;
      if (read?.kind !== "value") throw new Error(`cannot tell: ${read?.needs}`);
      expect(Math.abs(read.value - truth)).toBeLessThanOrEqual(read.plusMinus);
    }
  });

  it("has its left foot down for the share of the stride that the plates say", () => {
    const truth =
      (frameOf("L", "off", 0) - frameOf("L", "contact", 0)) /
      (frameOf("L", "contact", 1) - frameOf("L", "contact", 0));
    const read = review.strideReadings[0]?.stance;
    if (read?.kind !== "value") throw new Error(`cannot tell: ${read?.needs}`);
    expect(Math.abs(read.value - truth)).toBeLessThanOrEqual(read.plusMinus);
  });

  it("says of each foot in each pose what the plates say: down or up", () => {
    const told = review.footfalls.filter(({ foot }) => foot.kind === "value");
    expect(told.length).toBeGreaterThanOrEqual(20);
    for (const { side, panel, foot } of told) {
      const { frame } = walk.panels.find(({ id }) => id === panel) ?? fail();
      const own = events.filter((event) => event.foot === (side === "left" ? "L" : "R"));
      const last = own.findLast((event) => event.frame <= frame + 1);
      if (last === undefined) continue; // before the plates knew of it
      const state = foot.kind === "value" ? foot.state : "air";
      const span = review.footfalls.find((one) => one.panel === panel && one.side === side);
      if (span?.foot !== foot) continue; // the later part of a span, at a moment between poses
      expect(`${side} ${frame} ${state !== "air"}`).toBe(
        `${side} ${frame} ${last.kind === "contact"}`,
      );
    }
  });

  it("steps as far as its ankles stand apart", () => {
    // The ankle stays within 1.3 cm from a quarter to three quarters of the step: 1.4 % of a leg either way.
    for (const [n, step] of review.steps.slice(0, -1).entries()) {
      const side = step.weightOn ?? fail();
      const next = review.steps[n + 1] ?? fail();
      const middle = (from: number, to: number) => from + 0.5 * (to - from);
      const here = ankleAt(side, middle(step.contact.frame, next.contact.frame));
      const there = ankleAt(
        otherSide(side),
        middle(next.contact.frame, next.next?.frame ?? Number.NaN),
      );
      const read = review.stepReadings[n]?.length;
      if (read?.kind !== "value") throw new Error(`cannot tell: ${read?.needs}`);
      expect(Math.abs(read.value - (there - here) / LEG)).toBeLessThan(0.02);
    }
  });
});

function none(): ReturnType<typeof measured> {
  const walk = capturedWalk({ framesPerSecond: PER_SECOND, legLength: LEG, steps: [] });
  return { walk, events: [], ankleAt: () => Number.NaN };
}

function fail(): never {
  throw new Error("the walk lacks what this test reads");
}
