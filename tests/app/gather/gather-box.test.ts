import { describe, expect, it } from "vitest";
import {
  boxRound,
  gripAt,
  pulled,
  shownBox,
  transformOf,
  turnHandle,
} from "../../../app/_gather/gather-box";
import { shapePoint } from "../../../lib/ink";
import { strokeOf } from "../../support/strokes";

const box = { left: 100, top: 100, right: 300, bottom: 200 };
const HOLD = { pixel: 2, handles: true, finger: false }; // two panel units a CSS pixel

describe("the box round gathered strokes", () => {
  it("holds all their ink, width included, and is none round none", () => {
    const strokes = [strokeOf([[10, 20, 1]]), strokeOf([[50, 5, 1]])];
    expect(boxRound(strokes)).toEqual({ left: 8, top: 3, right: 52, bottom: 22 });
    expect(boxRound([])).toBeNull();
  });

  it("is shown a little clear of the ink, and taken by corner, turning handle or inside", () => {
    const shown = shownBox(box, HOLD.pixel);
    expect(shown.left).toBeLessThan(box.left);
    expect(shown.bottom).toBeGreaterThan(box.bottom);
    const grip = (x: number, y: number, hold = HOLD) => gripAt(box, { x, y }, hold)?.kind ?? null;
    expect(grip(shown.right, shown.bottom)).toBe("scale");
    expect(grip(200, turnHandle(shown, HOLD.pixel).y)).toBe("turn");
    expect(grip(200, 150)).toBe("move");
    expect(grip(500, 500)).toBeNull();
    const without = { ...HOLD, handles: false };
    expect(grip(shown.right - 1, shown.bottom - 1, without)).toBe("move");
  });

  it("is met by a finger from 22 px on, by a pen from 13", () => {
    const shown = shownBox(box, HOLD.pixel);
    const at = (px: number) => ({ x: shown.right + px * HOLD.pixel, y: shown.bottom });
    const grip = (px: number, finger: boolean) => gripAt(box, at(px), { ...HOLD, finger });
    expect([grip(12, false), grip(21, true)].map((one) => one?.kind)).toEqual(["scale", "scale"]);
    expect([grip(14, false), grip(23, true)]).toEqual([null, null]);
  });

  it("is moved by its middle, however small it is", () => {
    const dot = { left: 99, top: 99, right: 101, bottom: 101 };
    for (const finger of [false, true]) {
      expect(gripAt(dot, { x: 100, y: 100 }, { ...HOLD, finger })?.kind).toBe("move");
    }
  });

  it("has its turning handle below where there is no paper above", () => {
    expect(turnHandle({ ...box, top: 10 }, HOLD.pixel).y).toBeGreaterThan(box.bottom);
    expect(turnHandle(box, HOLD.pixel).y).toBeLessThan(box.top);
  });
});

describe("pulling the box", () => {
  it("moves by the pointer's way", () => {
    const shaping = pulled(box, { kind: "move" }, { x: 0, y: 0 }, { x: 7, y: -3 });
    expect(shapePoint({ x: 1, y: 1 }, shaping)).toEqual({ x: 8, y: -2 });
  });

  it("scales about the corner across, which stays, and never to nothing", () => {
    const grip = gripAt(box, { x: 310, y: 210 }, HOLD);
    if (grip === null) throw new Error("a corner is there");
    const twice = pulled(box, grip, { x: 300, y: 200 }, { x: 500, y: 300 });
    expect(shapePoint({ x: 300, y: 200 }, twice)).toEqual({ x: 500, y: 300 });
    expect(shapePoint({ x: 100, y: 100 }, twice)).toEqual({ x: 100, y: 100 });
    const past = pulled(box, grip, { x: 300, y: 200 }, { x: -900, y: -900 });
    expect(past.scale).toBeGreaterThan(0);
  });

  it("turns about the middle by the angle the pointer went", () => {
    const shaping = pulled(box, { kind: "turn" }, { x: 200, y: 50 }, { x: 300, y: 150 });
    expect(shaping.turn).toBeCloseTo(Math.PI / 2, 12);
    const middle = shapePoint({ x: 200, y: 150 }, shaping);
    expect(middle.x).toBeCloseTo(200, 9);
    expect(middle.y).toBeCloseTo(150, 9);
  });

  it("shows by its transform what it will do", () => {
    const shaping = { about: { x: 5, y: 6 }, scale: 1.5, turn: 0.4, by: { x: 3, y: -2 } };
    const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = transformOf(shaping)
      .slice("matrix(".length, -1)
      .split(" ")
      .map(Number);
    const { x, y } = shapePoint({ x: 40, y: 90 }, shaping);
    expect(a * 40 + c * 90 + e).toBeCloseTo(x, 9);
    expect(b * 40 + d * 90 + f).toBeCloseTo(y, 9);
  });
});
