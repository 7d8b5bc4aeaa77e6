import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { type Deed, listenToPen } from "../../../app/_ink/pen-listener";
import type { Hand } from "../../../app/_paper/hand";
import { FakePaper, type FakePointer, pointer } from "../../support/fake-paper";

function bench(deed: Deed | null = "draw") {
  const paper = new FakePaper();
  const hand: Hand = { penSeenAt: Number.NEGATIVE_INFINITY, dropFinger: null };
  const did: string[] = [];
  const tell = (x: number, y: number, pressure: number) =>
    `${Math.round(x)},${Math.round(y)} at ${pressure.toFixed(2)}`;
  const stop = listenToPen(paper.asElement(), {
    hand,
    deed: () => deed,
    begin(what, first) {
      did.push(`${what} ${tell(first.x, first.y, first.pressure)}`);
      return {
        move: (samples) => {
          for (const { x, y, pressure } of samples) did.push(tell(x, y, pressure));
        },
        end: () => did.push("end"),
        cancel: () => did.push("cancel"),
      };
    },
  });
  const send = (name: string, with_: FakePointer = {}) => paper.dispatchEvent(pointer(name, with_));
  return { paper, hand, did, send, stop };
}

describe("a pen on the paper", () => {
  beforeEach(() => vi.stubGlobal("window", new EventTarget()));
  afterEach(() => vi.unstubAllGlobals());

  it("draws from down to up in panel units, with its own pressure", () => {
    const { did, send } = bench();
    send("pointerdown", { x: 110, y: 60, pressure: 0 });
    send("pointermove", { x: 120, y: 70, pressure: 0.25 });
    send("pointerup", { x: 120, y: 70 });
    expect(did).toEqual(["draw 20,20 at 0.02", "40,40 at 0.25", "end"]);
  });

  it("keeps the points that came between two frames", () => {
    const { did, send } = bench();
    send("pointerdown");
    const coalesced = [{ x: 101 }, { x: 102 }, { x: 103 }];
    send("pointermove", { x: 103, coalesced });
    expect(did.slice(1)).toEqual(["2,0 at 0.50", "4,0 at 0.50", "6,0 at 0.50"]);
  });

  it("brings what lies far off the paper to its margin", () => {
    const { did, send } = bench();
    send("pointerdown");
    send("pointermove", { x: 2000, y: -2000 });
    expect(did.at(-1)).toBe("792,-120 at 0.50");
  });

  it("rubs out with its other end", () => {
    const { did, send } = bench();
    send("pointerdown", { button: 5, buttons: 32 });
    expect(did).toEqual(["rub-out 0,0 at 0.50"]);
  });

  it("does nothing with another button, nor with a tool that moves the paper", () => {
    const other = bench();
    other.send("pointerdown", { type: "mouse", button: 2, buttons: 2 });
    const moving = bench(null);
    moving.send("pointerdown");
    expect([...other.did, ...moving.did]).toEqual([]);
  });

  it("keeps a line that the system takes the pen away from", () => {
    const { did, send } = bench();
    send("pointerdown");
    send("pointercancel");
    send("lostpointercapture");
    expect(did.slice(1)).toEqual(["end"]);
  });

  it("keeps the line under way when the paper leaves the screen", () => {
    const { did, send, stop, paper } = bench();
    send("pointerdown");
    stop();
    send("pointermove", { x: 140 });
    send("pointerdown", { id: 2 });
    expect(did.slice(1)).toEqual(["end"]);
    expect(paper.captured.size).toBe(0);
  });
});

describe("fingers on the paper", () => {
  beforeEach(() => vi.stubGlobal("window", new EventTarget()));
  afterEach(() => vi.unstubAllGlobals());

  it("one draws", () => {
    const { did, send } = bench();
    send("pointerdown", { type: "touch" });
    send("pointerup", { type: "touch" });
    expect(did).toEqual(["draw 0,0 at 0.55", "end"]);
  });

  it("a second one, wherever it lands, takes back what the first drew", () => {
    const { did, send, hand } = bench();
    send("pointerdown", { type: "touch" });
    window.dispatchEvent(pointer("pointerdown", { type: "touch", id: 2 }));
    send("pointermove", { type: "touch", x: 150 });
    expect(did.slice(1)).toEqual(["cancel"]);
    expect(hand.dropFinger).toBeNull();
  });

  it("a palm that came first gives way to the pen", () => {
    const { did, send } = bench();
    send("pointerdown", { type: "touch" });
    send("pointermove", { id: 5, at: 30 }); // the pen comes near
    send("pointerdown", { id: 5, at: 60 });
    expect(did.slice(1)).toEqual(["cancel", "draw 0,0 at 0.50"]);
  });
});
