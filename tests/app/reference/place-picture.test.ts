import { describe, expect, it } from "vitest";
import {
  carryPlace,
  fitPicture,
  middleOf,
  movePlace,
  pullPlace,
  scalePlace,
} from "../../../app/_reference/place-picture";
import { PICTURE_SIZE } from "../../../lib/sheet";

const PLACE = { x: 100, y: 200, width: 300, height: 150 };

describe("where a picture lies", () => {
  it.each([
    // worked by hand: a view is 720 by 1200 panel units
    [
      { width: 1440, height: 1080 },
      { x: 0, y: 330, width: 720, height: 540 },
    ],
    [
      { width: 300, height: 1000 },
      { x: 180, y: 0, width: 360, height: 1200 },
    ],
    [
      { width: 3, height: 5 },
      { x: 0, y: 0, width: 720, height: 1200 },
    ],
  ])("fits %o into the view's middle, whole", (size, fitted) => {
    expect(fitPicture(size)).toEqual(fitted);
  });

  it("makes a thread of a picture thick enough to lie anywhere", () => {
    const { width, height } = fitPicture({ width: 2000, height: 1 });
    expect([width, height]).toEqual([720, PICTURE_SIZE.least]);
  });

  it("is moved by what was asked, and keeps some of itself on the paper", () => {
    expect(movePlace(PLACE, { x: -30, y: 12 })).toEqual({ ...PLACE, x: 70, y: 212 });
    expect(movePlace(PLACE, { x: -9999, y: -9999 })).toMatchObject({ x: 36 - 300, y: 36 - 150 });
    expect(movePlace(PLACE, { x: 9999, y: 9999 })).toMatchObject({ x: 720 - 36, y: 1200 - 36 });
  });

  it("keeps its proportions and the point it is scaled around", () => {
    const about = { x: 160, y: 230 }; // a fifth of its width and of its height in
    const scaled = scalePlace(PLACE, 2, about);
    expect(scaled).toMatchObject({ width: 600, height: 300 });
    expect(scaled.x + 0.2 * scaled.width).toBeCloseTo(about.x, 9);
    expect(scaled.y + 0.2 * scaled.height).toBeCloseTo(about.y, 9);
  });

  it.each([0, 1e-9, 1e9])("is never lost to sight, scaled by %f", (factor) => {
    const { width, height } = scalePlace(PLACE, factor, middleOf(PLACE));
    expect(width / height).toBeCloseTo(2, 9);
    expect(height).toBeGreaterThanOrEqual(PICTURE_SIZE.least - 1e-9);
    expect(width).toBeLessThanOrEqual(PICTURE_SIZE.most + 1e-9);
  });

  it("goes along with one finger, and keeps under two what was under them", () => {
    expect(carryPlace(PLACE, [{ x: 5, y: 5 }], [{ x: 25, y: 0 }])).toMatchObject({
      x: 120,
      y: 195,
    });
    const from = [
      { x: 150, y: 220 },
      { x: 350, y: 320 },
    ];
    const to = [
      { x: 120, y: 300 },
      { x: 420, y: 450 }, // half as far apart again, and elsewhere
    ];
    const carried = carryPlace(PLACE, from, to);
    expect(carried.width).toBeCloseTo(450, 9);
    for (const [index, before] of from.entries()) {
      const share = { x: (before.x - PLACE.x) / 300, y: (before.y - PLACE.y) / 150 };
      expect(carried.x + share.x * carried.width).toBeCloseTo(to[index]?.x ?? 0, 9);
      expect(carried.y + share.y * carried.height).toBeCloseTo(to[index]?.y ?? 0, 9);
    }
  });

  it("grows around its middle as its corner is pulled", () => {
    const middle = middleOf(PLACE); // 250, 275
    const pulled = pullPlace(PLACE, { x: 400, y: 350 }, { x: 550, y: 425 }); // twice as far out
    expect(middleOf(pulled)).toEqual(middle);
    expect(pulled).toMatchObject({ width: 600, height: 300 });
  });
});
