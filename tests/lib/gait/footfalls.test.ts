import { describe, expect, it } from "vitest";
import { SIDES, type Side } from "../../../lib/body";
import { type FootSpan, reviewWalk, type Walk, type Yardstick } from "../../../lib/gait";
import { defaultBrief, layOut, walkOf } from "../../../lib/sheet";
import strides from "../../reference/captured-strides.json";
import events from "../../reference/foot-events.json";
import { capturedWalk } from "../../support/captured";
import { ids } from "../../support/peers";
import { type PanelName, walk as plainWalk, unmark, withPanel } from "../../support/walk";

const LETTERS: Readonly<Record<string, string>> = {
  heel: "h",
  flat: "F",
  ball: "b",
  toe: "t",
  air: ".",
};

/** One foot as a line, a letter a frame: h heel, F flat, b ball, t toe, . air, ? cannot tell. */
function line(spans: readonly FootSpan[], side: Side): string {
  return spans
    .filter((span) => span.side === side)
    .map(({ from, to, foot }) => {
      const letter = foot.kind === "value" ? (LETTERS[foot.state] ?? "") : "?";
      return letter.repeat(Math.round(to) - Math.round(from));
    })
    .join("");
}

function footfallsOf(walk: Walk, yardstick: Yardstick = "trade"): readonly FootSpan[] {
  return reviewWalk(walk, yardstick).footfalls;
}

const bare = (over = {}) => walkOf(layOut({ ...defaultBrief, ...over }, ids()));

const LEG = 420; // panel units, of the built walk

/** One foot of a panel higher by so many leg lengths, its ball and toe by more. */
function moveFoot(
  from: Walk,
  name: PanelName,
  side: Side,
  { up = 0, toeUp = 0 }: { readonly up?: number; readonly toeUp?: number },
): Walk {
  const panel = from.panels.find(({ id }) => id === name);
  if (panel === undefined) throw new Error(`no panel ${name}`);
  const moved = { ...panel.marks.side };
  for (const joint of [`${side}-heel`, `${side}-ball`, `${side}-toe`] as const) {
    const mark = moved[joint];
    if (mark === undefined) throw new Error(`no ${joint} on ${name}`);
    const by = up + (joint.endsWith("heel") ? 0 : toeUp);
    moved[joint] = { ...mark, y: mark.y - by * LEG };
  }
  return withPanel(from, name, { marks: { ...panel.marks, side: moved } });
}

describe("footfalls of a strip that has only labels", () => {
  it("roll from heel to toe, and leave by the other foot's down", () => {
    const spans = footfallsOf(bare());
    expect(line(spans, "left")).toBe("hhhFFFFbbbbbbbb.........");
    expect(line(spans, "right")).toBe("bbb.........hhhFFFFbbbbb");
    expect(spans.every(({ foot }) => foot.kind === "value" && foot.by === "label")).toBe(true);
  });

  it("bear for as much of the stride as walkers do", () => {
    const left = line(footfallsOf(bare()), "left");
    const share = [...left].filter((letter) => letter !== ".").length / left.length;
    expect(share).toBeCloseTo(0.62, 1); // stance 62 % of the stride, Perry; 58.1–68.1 % at a normal pace
  });

  it("go flat and leave at 0.24 of the step where life's down comes long before", () => {
    const panels = bare().panels.map((panel) =>
      panel.pose === "down" ? { ...panel, frame: panel.frame - 2 } : panel,
    );
    const walk = { ...bare(), panels };
    const spans = footfallsOf(walk, "life");
    const [left, right] = SIDES.map((side) => spans.filter((span) => span.side === side));
    // By hand: 1 + 0.24 × 12 frames, and 1 + 0.62 × 12 for the heel.
    expect(left?.slice(0, 6).map(({ from, foot }) => [from, foot])).toMatchObject([
      [1, { state: "heel" }],
      [2, { state: "heel" }],
      [3.88, { state: "flat" }],
      [7, { state: "flat" }],
      [8.44, { state: "ball" }],
      [10, { state: "ball" }],
    ]);
    expect(right?.[1]).toMatchObject({ from: 2, to: 3.88, foot: { state: "ball" } });
    expect(right?.[2]).toMatchObject({ from: 3.88, to: 7, foot: { state: "air" } });
  });

  it("stand on both feet before the lead-in, and say what they cannot tell", () => {
    const spans = footfallsOf(bare({ leadIn: true }));
    expect(line(spans, "left").slice(0, 12)).toBe("FFFFFF??????");
    expect(line(spans, "right").slice(0, 12)).toBe("FFFFFFFFFFFF");
    const untold = spans.find(({ foot }) => foot.kind === "cannot-tell");
    expect(untold?.foot).toMatchObject({
      needs: "the left heel and ball or toe marked in the side view",
    });
  });

  it("cannot tell where nobody said whose weight it is", () => {
    const walk = bare();
    const panels = walk.panels.map((panel) => ({ ...panel, weightOn: null }));
    const spans = footfallsOf({ ...walk, panels });
    expect(line(spans, "left")).toBe("?".repeat(24));
    expect(spans[0]?.foot).toMatchObject({ needs: "the side that carries the weight" });
  });

  it("are none on a strip of one panel, and skip panels on one frame", () => {
    const walk = bare();
    expect(footfallsOf({ ...walk, panels: walk.panels.slice(0, 1) })).toEqual([]);
    const panels = walk.panels.map((panel) => ({ ...panel, frame: 3 }));
    expect(footfallsOf({ ...walk, panels })).toEqual([]);
  });
});

describe("footfalls of marked feet", () => {
  const at = (walk: Walk, panel: string, side: Side) =>
    footfallsOf(walk).find((span) => span.panel === panel && span.side === side)?.foot;

  it("are told by the marks where these are exact enough", () => {
    expect(at(plainWalk(), "left passing", "left")).toEqual({
      kind: "value",
      state: "flat",
      by: "marks",
    });
  });

  it("see a foot in the air that should carry", () => {
    const floating = moveFoot(plainWalk(), "left passing", "left", { up: 0.1 });
    expect(at(floating, "left passing", "left")).toMatchObject({ state: "air", by: "marks" });
  });

  it("do not take a low swinging foot for one that bears", () => {
    const low = moveFoot(plainWalk(), "left passing", "right", { up: -0.2 });
    expect(at(low, "left passing", "right")).toMatchObject({ state: "air", by: "label" });
  });

  it("see a foot roll onto its heel or its toe", () => {
    const up = moveFoot(plainWalk(), "left passing", "left", { toeUp: 0.1 });
    expect(at(up, "left passing", "left")).toMatchObject({ state: "heel", by: "marks" });
  });

  it("fall back on the label without a heel", () => {
    const heelless = unmark(plainWalk(), "left passing", ["left-heel"]);
    expect(at(heelless, "left passing", "left")).toMatchObject({ state: "flat", by: "label" });
  });
});

describe.each(events.rows)("the footfalls of captured walk $clip", ({ clip, events: seen }) => {
  it("bear and swing as the whole motion does, in 95 frames of 100", () => {
    const captured = strides.walks.find((walk) => walk.clip === clip);
    if (captured === undefined) throw new Error(`no stride of ${clip}`);
    const walk = capturedWalk(captured);
    const spans = footfallsOf(walk, "life");
    let frames = 0;
    let right = 0;
    for (const side of SIDES) {
      const events = seen.filter(({ foot }) => foot === side);
      for (const { from, to, foot } of spans.filter((span) => span.side === side)) {
        for (let frame = Math.ceil(from); frame < to; frame += 1) {
          const last = events.findLast((event) => event.frame <= frame);
          // Before its first event a foot is in what that event ends.
          const bears = last === undefined ? events[0]?.kind === "off" : last.kind === "contact";
          frames += 1;
          if (foot.kind === "value" && (foot.state !== "air") === bears) right += 1;
        }
      }
    }
    expect(frames).toBeGreaterThan(200);
    expect(right / frames).toBeGreaterThanOrEqual(0.95);
  });
});
