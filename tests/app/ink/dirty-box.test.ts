import { describe, expect, it } from "vitest";
import { dirtyBox } from "../../../app/_ink/dirty-box";
import { type InkPoint, NIBS, outlineOf } from "../../../lib/ink";
import { dice } from "../../support/dice";

const WIDTHS = { fine: 4, broad: 10, under: 16 } as const;

/** A hand's line: it turns and speeds up, now and then it dwells. */
function scrawl(seed: number, count: number): InkPoint[] {
  const { below } = dice(seed);
  const roll = () => below(1000) / 1000;
  let [x, y, heading, speed] = [360, 600, roll() * 6, 6];
  return Array.from({ length: count }, (): InkPoint => {
    heading += (roll() - 0.5) * 1.6;
    speed = roll() < 0.05 ? 0.5 : Math.min(40, Math.max(1, speed + (roll() - 0.5) * 8));
    x += Math.cos(heading) * speed;
    y += Math.sin(heading) * speed;
    return [x, y, 0.2 + 0.7 * roll()];
  });
}

describe("the dirty box of a growing stroke", () => {
  it("is nothing while no point came", () => {
    expect(dirtyBox({ width: 4, points: scrawl(1, 30) }, 30)).toBeNull();
  });

  it("is the whole of a stroke that was not painted yet, its width included", () => {
    const points: InkPoint[] = [
      [100, 200, 0.5],
      [140, 260, 0.5],
    ];
    const box = { left: 98, top: 198, right: 142, bottom: 262 };
    expect(dirtyBox({ width: 4, points }, 0)).toEqual(box);
  });

  it("leaves the settled part of a long stroke alone", () => {
    const points = Array.from({ length: 200 }, (_, index): InkPoint => [index * 3, 600, 0.5]);
    const box = dirtyBox({ width: 4, points }, 195);
    expect(box?.left).toBeGreaterThan(500);
  });

  it.each(NIBS)("holds every corner of a %s line's outline that another point moves", (nib) => {
    const width = WIDTHS[nib];
    for (let seed = 1; seed <= 12; seed++) {
      const all = scrawl(seed, 120);
      for (let painted = 3; painted < all.length; painted += 7) {
        const points = all.slice(0, painted + 1 + (seed % 4));
        const box = dirtyBox({ width, points }, painted);
        const before = outlineOf({ nib, width, points: all.slice(0, painted) }, false);
        const after = outlineOf({ nib, width, points }, false);
        for (const [x, y] of moved(before, after)) {
          if (box === null) throw new Error("new points, and nothing to paint");
          const inside = x >= box.left && x <= box.right && y >= box.top && y <= box.bottom;
          expect(inside, `seed ${seed}, point ${painted}: ${x}, ${y}`).toBe(true);
        }
      }
    }
  });
});

type Outline = readonly (readonly [x: number, y: number])[];

function moved(before: Outline, after: Outline): Outline {
  const name = ([x, y]: readonly [number, number]) => `${x.toFixed(4)} ${y.toFixed(4)}`;
  const had = new Set(before.map(name));
  const has = new Set(after.map(name));
  return [
    ...before.filter((corner) => !has.has(name(corner))),
    ...after.filter((corner) => !had.has(name(corner))),
  ];
}
