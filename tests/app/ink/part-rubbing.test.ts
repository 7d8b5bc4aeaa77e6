import { describe, expect, it } from "vitest";
import { beginPartRubbing } from "../../../app/_ink/part-rubbing";
import { strokeOf } from "../../support/strokes";

const at = (x: number, y: number) => ({ x, y, pressure: 1 });
const line = (id: string, y: number) => ({
  id,
  ...strokeOf([
    [0, y, 1],
    [100, y, 1],
  ]),
});

describe("rubbing out parts", () => {
  it("leaves two pieces where the rubber crossed, and other strokes alone", () => {
    const ink = [line("one", 50), line("two", 400)];
    const rubbing = beginPartRubbing(at(50, 0), 10);
    expect(rubbing.move(ink, [at(50, 30)])).toBe(false);
    expect(rubbing.move(ink, [at(50, 100)])).toBe(true);
    expect([...rubbing.pieces.keys()]).toEqual(["one"]);
    const spans = rubbing
      .left(ink)
      .map(({ id, points }) => [id, points[0]?.[0], points.at(-1)?.[0]]);
    expect(spans).toEqual([
      ["one", 0, 38],
      ["one", 62, 100],
      ["two", 0, 100],
    ]);
  });

  it("goes on with what is left, up to nothing", () => {
    const ink = [line("one", 50)];
    const rubbing = beginPartRubbing(at(0, 50), 10);
    rubbing.move(ink, [at(50, 50)]);
    expect(rubbing.left(ink).length).toBe(1);
    rubbing.move(ink, [at(100, 50)]);
    expect(rubbing.left(ink)).toEqual([]);
    expect(rubbing.pieces.get("one")).toEqual([]);
  });

  it("does not count a brush with the ink's edge that takes nothing", () => {
    const wide = { ...line("one", 50), width: 40 };
    const rubbing = beginPartRubbing(at(50, 20), 5);
    expect(rubbing.move([wide], [at(60, 20)])).toBe(false);
    expect(rubbing.pieces.size).toBe(0);
  });
});
