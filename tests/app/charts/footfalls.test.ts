import { describe, expect, it } from "vitest";
import { footfallCells, laneY } from "../../../app/_charts/footfall-cells";
import { joined, sumUpFootfalls, tellCell, tenth } from "../../../app/_charts/footfall-words";
import { stopAfter } from "../../../app/_charts/use-rove";
import { reviewWalk } from "../../../lib/gait";
import { layOut, walkOf } from "../../../lib/sheet";
import { BRIEF_DEFAULTS } from "../../../shared/brief-defaults";

function cellsOf(over: Partial<typeof BRIEF_DEFAULTS> = {}) {
  let count = 0;
  const sheet = layOut({ ...BRIEF_DEFAULTS, ...over }, () => `panel${count++}`);
  const { footfalls } = reviewWalk(walkOf(sheet), "trade");
  return footfallCells(footfalls, (frame) => 100 + 20 * frame);
}

describe("the footfalls chart", () => {
  it("lays each foot's spans on the ruler's frames, in a lane of its own", () => {
    const cells = cellsOf();
    const [first] = cells;
    expect(first).toMatchObject({ side: "left", state: "heel", x: 120, width: 60, from: 1, to: 4 });
    for (const side of ["left", "right"] as const) {
      const lane = cells.filter((cell) => cell.side === side);
      expect(new Set(lane.map(({ y }) => y))).toEqual(new Set([laneY(side)]));
      for (const [at, cell] of lane.slice(1).entries()) {
        const before = lane[at];
        expect(cell.x).toBeCloseTo((before?.x ?? 0) + (before?.width ?? 0), 9);
      }
    }
  });

  it("says each cell and the whole in words", () => {
    const cells = cellsOf({ leadIn: true });
    expect(tellCell(cells[0] ?? fail())).toBe("left foot, frames 1 to 7: flat");
    expect(tellCell(cells[1] ?? fail())).toBe(
      "left foot, frames 7 to 13: cannot tell: needs the left heel and ball or toe marked in the side view",
    );
    expect(sumUpFootfalls(cellsOf())).toBe(
      "The left foot is down for 15 of 24 frames. The right foot is down for 15 of 24 frames. Both are down for 6, neither for 0, of 24 frames.",
    );
  });
});

describe("the footfalls as a table", () => {
  it("have a row for as long as a foot stays as it is", () => {
    const rows = joined(cellsOf()).map(({ side, from, to, state }) =>
      [side, tenth(from), tenth(to), state].join(" "),
    );
    // 8.44 = 1 + 0.62 of 12 frames, the heel's rise.
    expect(rows).toEqual([
      "left 1 4 heel",
      "left 4 8.4 flat",
      "left 8.4 16 ball",
      "left 16 25 air",
      "right 1 4 ball",
      "right 4 13 air",
      "right 13 16 heel",
      "right 16 20.4 flat",
      "right 20.4 25 ball",
    ]);
  });
});

describe("a key on a chart", () => {
  const stops = ["left", "right"].flatMap((row) =>
    ["a", "b", "c"].map((panel) => ({ key: `${row} ${panel}`, panel, row })),
  );
  const from = (key: string, pressed: string) =>
    stopAfter(stops, stops.find((stop) => stop.key === key) ?? fail(), pressed)?.key;

  it("goes along a row and stops at its ends", () => {
    expect(from("left b", "ArrowRight")).toBe("left c");
    expect(from("left c", "ArrowRight")).toBe("left c");
    expect(from("left a", "ArrowLeft")).toBe("left a");
    expect(from("right b", "Home")).toBe("right a");
    expect(from("right b", "End")).toBe("right c");
  });

  it("goes between rows at the same panel, and leaves other keys alone", () => {
    expect(from("left b", "ArrowDown")).toBe("right b");
    expect(from("right b", "ArrowUp")).toBe("left b");
    expect(from("right b", "ArrowDown")).toBe("right b");
    expect(from("right b", "Enter")).toBeUndefined();
    const hips = stops.filter(({ row }) => row === "left");
    expect(stopAfter(hips, hips[0] ?? fail(), "ArrowDown")).toBeNull();
  });
});

function fail(): never {
  throw new Error("it is not there");
}
