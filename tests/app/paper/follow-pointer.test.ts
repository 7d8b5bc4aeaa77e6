import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { followPointer, type PointerDeps } from "../../../app/_paper/follow-pointer";
import type { Hand } from "../../../app/_paper/hand";
import { pointOn } from "../../../app/_paper/point-on";
import { FakePaper, type FakePointer, pointer } from "../../support/fake-paper";

const handOnTheBoard = (): Hand => ({ penSeenAt: Number.NEGATIVE_INFINITY, dropFinger: null });

function follow(changes: Partial<PointerDeps> = {}, hand = handOnTheBoard()) {
  const paper = new FakePaper();
  const did: string[] = [];
  const stop = followPointer(paper.asElement(), {
    hand,
    begin(event) {
      did.push(`down ${event.pointerId}`);
      return {
        move: ({ clientX }) => did.push(`at ${clientX}`),
        end: () => did.push("end"),
        cancel: () => did.push("cancel"),
      };
    },
    ...changes,
  });
  const send = (name: string, with_: FakePointer = {}) => paper.dispatchEvent(pointer(name, with_));
  return { paper, did, send, stop, hand };
}

beforeEach(() => vi.stubGlobal("window", new EventTarget()));
afterEach(() => vi.unstubAllGlobals());

describe("a pointer followed on an element", () => {
  it("is followed from down to up, and captured meanwhile", () => {
    const { paper, did, send } = follow();
    send("pointermove", { x: 90 });
    send("pointerdown");
    expect([...paper.captured]).toEqual([1]);
    send("pointermove", { x: 130 });
    send("pointerup");
    send("pointermove", { x: 140 });
    expect(did).toEqual(["down 1", "at 130", "end"]);
    expect(paper.captured.size).toBe(0);
  });

  it("is let be where it means nothing", () => {
    const { paper, did, send } = follow({ begin: () => null });
    send("pointerdown");
    send("pointerup");
    expect([...did, ...paper.captured]).toEqual([]);
  });

  it("counts with its first button, and with a pen's other end only where that is asked for", () => {
    const eraser = { button: 5, buttons: 32 };
    const plain = follow();
    plain.send("pointerdown", { type: "mouse", button: 2, buttons: 2 });
    plain.send("pointerdown", eraser);
    expect(plain.did).toEqual([]);
    const rubbing = follow({ takesEraser: true });
    rubbing.send("pointerdown", eraser);
    expect(rubbing.did).toEqual(["down 1"]);
  });

  it("leaves everything as it was when it is lost, unless what it did is to be kept", () => {
    const ends = (keepsWhenLost: boolean, type: "pen" | "touch", how: string) => {
      const { did, send } = follow({ keepsWhenLost });
      send("pointerdown", { type });
      send(how, { type });
      send("lostpointercapture", { type });
      return did.slice(1);
    };
    expect(ends(false, "pen", "pointercancel")).toEqual(["cancel"]);
    expect(ends(true, "pen", "pointercancel")).toEqual(["end"]);
    expect(ends(true, "touch", "pointercancel")).toEqual(["cancel"]);
    expect(ends(true, "touch", "lostpointercapture")).toEqual(["end"]);
  });

  it("is not followed any longer once nobody listens", () => {
    const { did, send, stop, paper } = follow();
    send("pointerdown");
    stop();
    send("pointerdown", { id: 2 });
    expect(did).toEqual(["down 1", "cancel"]);
    expect(paper.captured.size).toBe(0);
  });
});

describe("fingers and palms", () => {
  it("a second finger anywhere cancels what the first does; another pointer does not", () => {
    const { did, send, hand } = follow();
    send("pointerdown", { type: "touch" });
    window.dispatchEvent(pointer("pointerdown", { type: "mouse", id: 3 }));
    expect(did).toEqual(["down 1"]);
    window.dispatchEvent(pointer("pointerdown", { type: "touch", id: 2 }));
    expect(did).toEqual(["down 1", "cancel"]);
    expect(hand.dropFinger).toBeNull();
  });

  it("a pen that was near one paper keeps the palm off every other", () => {
    const one = follow();
    const other = follow({}, one.hand);
    one.send("pointermove", { at: 1000 });
    other.send("pointerdown", { type: "touch", at: 2000 });
    expect(other.did).toEqual([]);
    other.send("pointerdown", { type: "touch", at: 2600 });
    expect(other.did).toEqual(["down 1"]);
  });

  it("a pen that comes near another paper drops what a finger does", () => {
    const one = follow();
    const other = follow({}, one.hand);
    one.send("pointerdown", { type: "touch" });
    other.send("pointermove", { at: 30 });
    expect(one.did).toEqual(["down 1", "cancel"]);
  });
});

it("a place on screen is a place on the paper", () => {
  const paper = new FakePaper().asElement();
  expect(pointOn(pointer("pointermove", { x: 110, y: 45 }), paper)).toEqual({ x: 20, y: -10 });
});
