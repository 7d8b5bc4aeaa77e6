import type { Frame } from "../../motion";
import { advanceOf } from "../advance";
import { HEAD_FIELDS } from "../fields";
import type { PanelId } from "../sheet";
import type { TimedPanel } from "./sections";
import type { TimedSheet, TimePlan } from "./time-plan";

/**
 * What of the head follows new frames: frames per step, the loop, and the advance, so that a stride still
 * covers the ground that it covered. Only what changes is in it.
 *
 * Units:   frames; advance in leg lengths a frame
 */
export function retimedHead(
  { head, panels }: TimedSheet,
  moved: ReadonlyMap<PanelId, Frame>,
  framesPerStep: TimedSheet["head"]["framesPerStep"],
): TimePlan["head"] {
  const { left, right } = head.framesPerStep;
  const sameTempo = framesPerStep.left === left && framesPerStep.right === right;
  const loop = {
    from: carried(head.loop.from, panels, moved),
    to: carried(head.loop.to, panels, moved),
  };
  const sameLoop = loop.from === head.loop.from && loop.to === head.loop.to;
  const advance = advanceAfter(head, framesPerStep);
  return {
    ...(sameTempo ? {} : { framesPerStep }),
    ...(sameLoop || !HEAD_FIELDS.loop.fits(loop) ? {} : { loop }),
    ...(sameTempo || advance === head.advance ? {} : { advance }),
  };
}

/** A frame's place after the panels moved: with the panel on it, or between those beside it. */
function carried(
  frame: Frame,
  panels: readonly TimedPanel[],
  moved: ReadonlyMap<PanelId, Frame>,
): Frame {
  const after = (panel: TimedPanel): Frame => moved.get(panel.id) ?? panel.frame;
  const before = panels.findLast((panel) => panel.frame <= frame);
  const next = panels.find((panel) => panel.frame >= frame);
  const beside = before ?? next;
  if (beside === undefined) return frame;
  if (before === undefined || next === undefined || next.frame === before.frame) {
    return Math.max(1, frame + after(beside) - beside.frame);
  }
  const share = (frame - before.frame) / (next.frame - before.frame);
  return Math.round(after(before) + share * (after(next) - after(before)));
}

function advanceAfter(
  head: TimedSheet["head"],
  framesPerStep: TimedSheet["head"]["framesPerStep"],
): number {
  const { left, right } = head.framesPerStep;
  if (head.advance === advanceOf(head.stepLength, head.framesPerStep)) {
    return advanceOf(head.stepLength, framesPerStep);
  }
  const byHand = (head.advance * (left + right)) / (framesPerStep.left + framesPerStep.right);
  return HEAD_FIELDS.advance.fits(byHand) ? byHand : head.advance;
}
