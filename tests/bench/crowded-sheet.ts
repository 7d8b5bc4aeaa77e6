import type { Nib } from "../../lib/ink";
import { layOut, type Panel, type Sheet, sheetFileText } from "../../lib/sheet";
import { BRIEF_DEFAULTS } from "../../shared/brief-defaults";
import { dice } from "../support/dice";

export interface Crowd {
  readonly panels: number;
  readonly strokesAPanel: number;
  readonly pointsAStroke: number;
}

const NIBS: readonly Nib[] = ["fine", "fine", "fine", "broad", "under"];
const SEED = 20;

/** The text of a sheet file with this much ink on it, two strokes in three from the side. */
export function crowdedSheetText({ panels, strokesAPanel, pointsAStroke }: Crowd): string {
  const { of, below } = dice(SEED);
  const name = (number: number) => number.toString(36).padStart(8, "A");
  let strokes = 0;

  const stroke = (panel: string, view: "side" | "front", z: number) => {
    const nib = of(NIBS);
    let [x, y, heading] = [150 + below(420), 150 + below(850), below(628) / 100];
    const points = Array.from({ length: pointsAStroke }, (_, index) => {
      heading += (below(100) - 50) / 160;
      x += Math.cos(heading) * 5;
      y += Math.sin(heading) * 5;
      const swell = Math.sin((Math.PI * (index + 1)) / (pointsAStroke + 1));
      return [x, y, 0.25 + 0.5 * swell] as const;
    });
    const width = { fine: 4, broad: 10, under: 16 }[nib];
    const colour = nib === "under" ? ("blue" as const) : ("graphite" as const);
    return { id: name(strokes++), panel, view, nib, colour, width, z, points };
  };

  const { head } = layOut(BRIEF_DEFAULTS, () => name(0));
  const inkOf = (id: string, view: "side" | "front", count: number) =>
    Array.from({ length: count }, (_, index) => stroke(id, view, index + 1));
  const front = Math.round(strokesAPanel / 3);
  const sheet: Sheet = {
    head: { ...head, title: "A crowded sheet", loop: { from: 1, to: 1 + 3 * (panels - 1) } },
    panels: Array.from({ length: panels }, (_, index): Panel => {
      const id = name(10_000 + index);
      return {
        ...{ id, frame: 1 + 3 * index, hold: 0, pose: "breakdown", weightOn: null, place: null },
        marks: { side: {}, front: {} },
        toRedraw: { side: false, front: false },
        ink: { side: inkOf(id, "side", strokesAPanel - front), front: inkOf(id, "front", front) },
        pictures: { side: null, front: null },
      };
    }),
  };
  return sheetFileText(sheet);
}
