import {
  groundToFront,
  groundToSide,
  JOINTS,
  type JointName,
  type Mark,
  PANEL,
  type PoseMarks,
} from "../../body";
import { type OnPurpose, purposeOf, reviewWalk } from "../../gait";
import type { View } from "../../geometry";
import { quantiseStroke, type Stroke } from "../../ink";
import { defaultBrief } from "../brief";
import { layOut } from "../lay-out";
import { byFrame } from "../order";
import type { Brief, HandedSheet, InkStroke, Panel, PanelId, Sheet, StrokeId } from "../sheet";
import { walkOf } from "../walk-of";
import { drawBrindleFront } from "./front/draw-front";
import type { Drawn } from "./hand/pencil";
import type { BrindlePose } from "./pose/brindle-pose";
import { BRINDLE_POSES, STEP_LENGTH } from "./pose/brindle-poses";
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
  load: 0.25, // a full sack: what a carrier bears all day. Invented, as he is
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
export function brindleExample(newId: () => PanelId): HandedSheet {
  const { head, panels } = layOut(BRIEF, newId);
  const drawn = drawings();
  const filled = panels.map((panel, i) => {
    const drawing = drawn[i];
    return drawing === undefined ? panel : fill(panel, drawing, newId);
  });
  const sheet = {
    head: { ...head, yardstick: "trade" as const, credit: CREDIT },
    panels: filled.sort(byFrame),
  };
  return { ...sheet, onPurpose: lowShoulder(sheet, newId()) };
}

/** What his carrier says of the left shoulder, for the whole walk. */
function lowShoulder(sheet: Sheet, id: string): readonly OnPurpose[] {
  const { remarks } = reviewWalk(walkOf(sheet), sheet.head.yardstick);
  const low = remarks.find(({ check }) => check === "symmetry");
  const purpose = low === undefined ? null : purposeOf(remarks, low, "walk");
  if (purpose === null) return [];
  return [{ id, ...purpose, reason: LOW_SHOULDER, by: "Brindle" }];
}

const LOW_SHOULDER = "The sack weighs on it: thirty years of parcels, and always the same side.";

const CREDIT =
  "Brindle and the Low Tide Post are invented; poses, drawings and marks were made up for this demo.";

/** A panel's drawing before it has ids. */
interface Drawing {
  readonly pose: BrindlePose;
  readonly marks: PoseMarks;
  readonly ink: Readonly<Record<View, readonly Stroke[]>>;
}

/** Drawn once and kept: it takes a tenth of a second, and the hub has others waiting. */
let kept: readonly Drawing[] | null = null;

function drawings(): readonly Drawing[] {
  kept ??= BRINDLE_POSES.map((pose, i): Drawing => {
    const figure = figureOf(pose);
    const seed = 101 + 17 * i;
    const inked = (view: View, drawn: readonly Drawn[]) =>
      drawn.map((stroke, z) => quantiseStroke({ ...stroke, panel: "", view, z }));
    return {
      pose,
      marks: marksOf(figure),
      ink: {
        side: inked("side", drawBrindleSide(figure, seed)),
        front: inked("front", drawBrindleFront(figure, seed + 7)),
      },
    };
  });
  return kept;
}

/** A panel of the strip with its drawing, every stroke under an id of its own. */
function fill(panel: Panel, { pose, marks, ink }: Drawing, newId: () => StrokeId): Panel {
  const inked = (strokes: readonly Stroke[]): InkStroke[] =>
    strokes.map((stroke) => ({ ...stroke, panel: panel.id, id: newId() }));
  return {
    ...panel,
    frame: panel.frame === LATE.drawnFor ? LATE.at : panel.frame,
    place: pose.place ?? null,
    marks,
    ink: { side: inked(ink.side), front: inked(ink.front) },
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
