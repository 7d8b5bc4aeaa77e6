import { describe, expect, it, vi } from "vitest";
import { type GatherHandDeps, openGatherHand } from "../../../app/_gather/gather-hand";
import type { InkStroke } from "../../../lib/sheet";
import { strokeOf } from "../../support/strokes";

const stroke = (id: string, x: number): InkStroke => ({
  id,
  ...strokeOf([
    [x, 100, 1],
    [x, 140, 1],
  ]),
});
const INK = [stroke("one", 100), stroke("two", 200), stroke("far", 600)];

function openHand(gathered: readonly InkStroke[] = [], changes: Partial<GatherHandDeps> = {}) {
  const gather = vi.fn<(strokes: readonly InkStroke[]) => void>();
  const deps: GatherHandDeps = {
    ink: () => INK,
    gathered: () => gathered,
    pixel: () => 1,
    handles: () => true,
    byBox: () => false,
    adding: () => false,
    showOutline: vi.fn(),
    showShaping: vi.fn(),
    showOver: vi.fn(),
    holdOver: vi.fn(),
    begin: vi.fn(),
    end: vi.fn(),
    gather,
    shape: vi.fn(),
    ...changes,
  };
  return { deps, gather, tool: openGatherHand(deps) };
}
const PEN = { adds: false, finger: false };
const WITH_SHIFT = { ...PEN, adds: true };
const here = (x: number, y: number) => ({ at: { x, y }, by: [], over: () => null });
const idsOf = (call: readonly InkStroke[] | undefined) => call?.map(({ id }) => id);

describe("the hand that gathers", () => {
  it("gathers what a lasso goes round", () => {
    const { deps, gather, tool } = openHand();
    tool.down({ x: 50, y: 50 }, PEN);
    for (const [x, y] of [
      [250, 50],
      [250, 200],
      [50, 200],
    ] as const) {
      tool.move(here(x, y));
    }
    tool.up();
    expect(idsOf(gather.mock.calls[0]?.[0])).toEqual(["one", "two"]);
    expect(deps.begin).toHaveBeenCalledOnce();
    expect(deps.end).toHaveBeenCalledOnce();
  });

  it("goes by every place that a quick pen passed", () => {
    const { gather, tool } = openHand();
    tool.down({ x: 50, y: 50 }, PEN);
    const by = [
      { x: 250, y: 50 },
      { x: 250, y: 200 },
    ];
    tool.move({ at: { x: 50, y: 200 }, by, over: () => null });
    tool.up();
    expect(idsOf(gather.mock.calls[0]?.[0])).toEqual(["one", "two"]);
  });

  it("gathers what a box from corner to corner holds", () => {
    const { gather, tool } = openHand([], { byBox: () => true });
    tool.down({ x: 150, y: 50 }, PEN);
    tool.move(here(900, 60));
    tool.move(here(700, 200));
    tool.up();
    expect(idsOf(gather.mock.calls[0]?.[0])).toEqual(["two", "far"]);
  });

  it("gathers the stroke under a tap, and lets go beside them", () => {
    const { gather, tool } = openHand();
    for (const at of [
      { x: 202, y: 120 },
      { x: 400, y: 600 },
    ]) {
      tool.down(at, PEN);
      tool.up();
    }
    expect(gather.mock.calls.map(([found]) => idsOf(found))).toEqual([["two"], []]);
  });

  it.each([
    ["Shift", WITH_SHIFT, false],
    ["adding chosen beforehand", PEN, true],
  ])("with %s a tap adds one, or lets one of them go", (_, press, adding) => {
    const { gather, tool } = openHand(INK.slice(0, 2), { adding: () => adding });
    for (const x of [602, 102, 400]) {
      tool.down({ x, y: 120 }, press);
      tool.up();
    }
    expect(gather.mock.calls.map(([found]) => idsOf(found))).toEqual([
      ["one", "two", "far"],
      ["two"],
      ["one", "two"],
    ]);
  });

  it("moves what is gathered, and takes it to the paper it is held over", () => {
    const { deps, tool } = openHand(INK.slice(0, 1));
    tool.down({ x: 100, y: 120 }, PEN);
    tool.move(here(110, 125));
    tool.up();
    expect(deps.shape).toHaveBeenLastCalledWith(
      expect.objectContaining({ by: { x: 10, y: 5 } }),
      null,
    );
    tool.down({ x: 100, y: 120 }, PEN);
    const over = { panel: "other001", view: "front", at: { x: 300, y: 320 } } as const;
    tool.move({ at: { x: 1000, y: 120 }, by: [], over: () => over });
    expect(deps.holdOver).toHaveBeenLastCalledWith({ panel: "other001", view: "front" });
    tool.up();
    expect(deps.shape).toHaveBeenLastCalledWith(
      expect.objectContaining({ by: { x: 200, y: 200 } }),
      { panel: "other001", view: "front" },
    );
    expect(deps.holdOver).toHaveBeenLastCalledWith(null);
  });

  it("does nothing when it is cancelled, or pressed and not moved", () => {
    const { deps, tool } = openHand(INK.slice(0, 1));
    tool.down({ x: 100, y: 120 }, PEN);
    tool.move(here(300, 300));
    tool.cancel();
    tool.down({ x: 100, y: 120 }, PEN);
    tool.move(here(102, 121)); // a hand that only rests
    tool.up();
    expect(deps.shape).not.toHaveBeenCalled();
    expect(deps.gather).not.toHaveBeenCalled();
    expect(deps.showShaping).toHaveBeenLastCalledWith(null);
    expect(deps.end).toHaveBeenCalledTimes(2);
  });
});
