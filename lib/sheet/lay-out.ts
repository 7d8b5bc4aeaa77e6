import type { Side } from "../body";
import type { SheetYardstick, WalkKind } from "../gait";
import { type Exposure, evenFrames, type Frame, nearestDrawn, type PoseName } from "../motion";
import { advanceOf } from "./advance";
import { byFrame } from "./order";
import type { Brief, Panel, PanelId, Sheet } from "./sheet";

const STEPS = 2; // one stride: left contact to left contact, which closes the loop

/**
 * The empty, labelled strip that a brief asks for: contact, down, passing and up of a left and a right
 * step, and the left contact again. With a lead-in, the stand comes first at frame 1, the lead-in half a
 * step later, and the first contact one step after frame 1; the loop is the stride alone. On twos a step
 * that is no whole number of exposures is laid out a frame longer, and the head says so: its frames per
 * step and its advance are the strip's own.
 *
 * A plain walk is held against the trade, every other kind against its own step.
 *
 * Units:   frames, counted from 1
 * Errors:  RangeError unless frames per step and step length are above zero
 *
 * @example
 * let panels = 0;
 * const newId = () => `panel-${panels++}`;
 * layOut(defaultBrief, newId).panels.map(({ frame }) => frame); // => [1, 4, 7, 10, 13, 16, 19, 22, 25]
 */
export function layOut(brief: Brief, newId: () => PanelId): Sheet {
  const { leadIn, framesPerStep: asked, exposure, stepLength, ...rest } = brief;
  const framesPerStep = {
    left: wholeExposures(asked.left, exposure),
    right: wholeExposures(asked.right, exposure),
  };
  const leadFrames = framesPerStep.right; // the right foot carries while the left goes to its contact
  const from = leadIn ? nearestDrawn(1 + leadFrames, exposure) : 1;
  const panel = (frame: Frame, pose: PoseName, weightOn: Side | null): Panel =>
    emptyPanel({ id: newId(), frame, pose, weightOn });
  const lead = leadIn
    ? [
        panel(1, "stand", null),
        panel(nearestDrawn(1 + leadFrames / 2, exposure), "lead-in", "right"),
      ]
    : [];
  const stride = evenFrames({ from, steps: STEPS, startsWith: "left", framesPerStep, exposure });
  const keys = stride.map((key) => panel(key.frame, key.pose, key.weightOn));
  const to = keys.at(-1)?.frame ?? from;
  const head = {
    ...rest,
    exposure,
    yardstick: yardstickFor(rest.kind),
    framesPerStep,
    stepLength,
    advance: advanceOf(stepLength, framesPerStep),
    loop: { from, to },
    credit: "",
  };
  return { head, panels: [...lead, ...keys].sort(byFrame) };
}

/** Handbooks speak of plain walks; what else a walk may be only it can say. */
function yardstickFor(kind: WalkKind): SheetYardstick {
  return kind === "plain" ? "trade" : "this-walk";
}

/** The whole exposures nearest to a step, the more of two. Frames. */
function wholeExposures(frames: number, exposure: Exposure): number {
  return nearestDrawn(1 + frames, exposure) - 1;
}

/** A panel with nothing drawn and nothing marked. */
export function emptyPanel(
  given: Pick<Panel, "id" | "frame" | "pose" | "weightOn"> & Partial<Pick<Panel, "hold" | "place">>,
): Panel {
  return {
    hold: 0,
    place: null,
    ...given,
    marks: { side: {}, front: {} },
    toRedraw: { side: false, front: false },
    ink: { side: [], front: [] },
    pictures: { side: null, front: null },
  };
}
