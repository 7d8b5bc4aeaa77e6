import {
  groundToFront,
  groundToSide,
  JOINTS,
  type JointName,
  type Mark,
  PANEL,
  type PoseMarks,
} from "../../body";
import type { View } from "../../geometry";
import { quantiseStroke } from "../../ink";
import { defaultBrief } from "../brief";
import { layOut } from "../lay-out";
import { byFrame, byHeight } from "../order";
import type { Brief, InkStroke, Panel, PanelId, Sheet } from "../sheet";
import { drawBrindleFront } from "./front/draw-front";
import { BRINDLE_POSES, type BrindlePose, STEP_LENGTH } from "./pose/brindle-poses";
import { type Figure, figureOf } from "./pose/figure";
import { drawBrindleSide } from "./side/draw-side";

const BRIEF: Brief = {
  ...defaultBrief,
  title: "Brindle carries the parcels",
  shot: "Low Tide Post, 12",
  kind: "heavy",
  stepLength: STEP_LENGTH,
  leadIn: true,
  build: { headsTall: 6.3, legShare: 0.5, statureMetres: null },
};

/** Planted fault: the right up, drawn for frame 34, hangs at 36, so that the step stalls and then jumps. */
const LATE = { drawnFor: 34, at: 36 } as const;

/** A figure that was placed: half a percent of a leg (see `mark`). Panel units. */
const PRECISION = 0.005 * PANEL.plainLeg;

/**
 * The demo: Brindle, a parcel carrier of the Low Tide Post, a heavy sack on his left shoulder; stand, lead-in
 * and one cycle, drawn and marked in both views. Held against the trade, three things show that were planted:
 * the right step's down does not sink, the left foot slips, and the right step is unevenly timed. His low left
 * shoulder is meant.
 *
 * All of it is invented: no person was measured for it, and nothing else may be tested against it. The joints
 * that made a drawing are its marks.
 *
 * Units:   frames at 24 a second; panel units; a leg is 420 of them
 * @param newId gives a new id for each panel and stroke
 */
export function brindleExample(newId: () => PanelId): Sheet {
  const { head, panels } = layOut(BRIEF, newId);
  const drawn = panels.map((panel, i): Panel => {
    const pose = BRINDLE_POSES[i];
    if (pose === undefined) return panel;
    return fill({ ...panel, frame: panel.frame === LATE.drawnFor ? LATE.at : panel.frame }, pose, {
      newId,
      seed: 101 + 17 * i,
    });
  });
  return { head: { ...head, credit: CREDIT }, panels: drawn.sort(byFrame) };
}

const CREDIT =
  "Brindle and the Low Tide Post are invented; poses, drawings and marks were made up for this demo.";

interface Hand {
  readonly newId: () => string;
  readonly seed: number;
}

function fill(panel: Panel, pose: BrindlePose, { newId, seed }: Hand): Panel {
  const figure = figureOf(pose);
  const inked = (view: View): InkStroke[] => {
    const strokes =
      view === "side" ? drawBrindleSide(figure, seed) : drawBrindleFront(figure, seed + 7);
    return strokes
      .map((stroke, z) => ({
        ...quantiseStroke({ ...stroke, panel: panel.id, view, z }),
        id: newId(),
      }))
      .sort(byHeight);
  };
  return {
    ...panel,
    place: pose.place ?? null,
    marks: marksOf(figure),
    ink: { side: inked("side"), front: inked("front") },
  };
}

/** Every joint in both views, to a panel unit's hundredth. */
function marksOf({ joints }: Figure): PoseMarks {
  const legLength = PANEL.plainLeg;
  const side: { [J in JointName]?: Mark } = {};
  const front: { [J in JointName]?: Mark } = {};
  for (const joint of JOINTS) {
    const place = joints[joint];
    side[joint] = mark(groundToSide(place, { place: 0, legLength }));
    front[joint] = mark(groundToFront(place, legLength));
  }
  return { side, front };
}

function mark({ x, y }: { readonly x: number; readonly y: number }): Mark {
  return { x: hundredth(x), y: hundredth(y), precision: PRECISION };
}

function hundredth(units: number): number {
  return Math.round(units * 100) / 100;
}
