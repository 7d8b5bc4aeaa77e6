import { VIEWS } from "../../lib/geometry";
import { type Exposure, type Frame, poseOn } from "../../lib/motion";
import type { Panel, Sheet } from "../../lib/sheet";

/** What play runs through: a way in, a loop, and what stands behind it. */
export interface Run {
  readonly first: Frame;
  /** The loop's first frame, and how many frames it has. */
  readonly loopFrom: Frame;
  readonly loopFrames: number;
  /** Where what stands behind the loop begins, and how many frames that has; none as a rule. */
  readonly tailFrom: Frame;
  readonly tailFrames: number;
}

/** How often the loop is run before play goes on behind it and begins again; null is for ever. */
export type Cycles = 1 | 2 | 4 | null;

/**
 * The run of a strip. The loop closes on the pose at its end, which is its first pose again and so is
 * not shown twice; an end that is another pose is shown for as long as the one before it. Where no panel
 * stands at an end of the loop, the strip's own end serves.
 *
 * Units:   frames
 * Errors:  none; an empty strip has no run
 */
export function runOf({ panels, head }: Sheet): Run | null {
  const first = panels[0];
  const last = panels.at(-1);
  if (first === undefined || last === undefined) return null;
  const opens = panels.find(({ frame }) => frame === head.loop.from) ?? first;
  const marked = panels.find(({ frame }) => frame === head.loop.to && frame > opens.frame);
  const ends = marked ?? last;
  const kept = opens.pose === ends.pose ? 0 : timeBefore(panels, ends);
  const isBehind = last.frame > ends.frame;
  return {
    first: first.frame,
    loopFrom: opens.frame,
    loopFrames: Math.max(1, ends.frame - opens.frame + kept),
    tailFrom: ends.frame + kept,
    tailFrames: isBehind ? last.frame - ends.frame - kept + timeBefore(panels, last) : 0,
  };
}

/** How long the pose before another is on. */
function timeBefore(panels: readonly Panel[], panel: Panel): number {
  const before = panels.findLast(({ frame }) => frame < panel.frame);
  return Math.max(1, panel.frame - (before?.frame ?? panel.frame));
}

/**
 * The frame that is on at a moment. It is counted from the start, so no error adds up.
 *
 * Units:   seconds since the start, frames a second → frame
 */
export function frameAt(
  run: Run,
  secondsIn: number,
  framesPerSecond: number,
  cycles: Cycles,
): Frame {
  // Half a thousandth of a frame: a clock that says 2.9999999 means the third.
  const count = Math.max(0, Math.floor(secondsIn * framesPerSecond + 0.0005));
  const wayIn = run.loopFrom - run.first;
  const looped = cycles === null ? Number.POSITIVE_INFINITY : cycles * run.loopFrames;
  const whole = wayIn + looped + run.tailFrames;
  const at = Number.isFinite(whole) ? count % whole : count;
  if (at < wayIn) return run.first + at;
  if (at < wayIn + looped) return run.loopFrom + ((at - wayIn) % run.loopFrames);
  return run.tailFrom + at - wayIn - looped;
}

/**
 * The panel that shows at a frame: the latest with something on it that stands there or before, unless one
 * before it is still held. A strip that is half drawn keeps what is drawn instead of flashing bare paper.
 */
export function panelAt(
  panels: readonly Panel[],
  frame: Frame,
  exposure: Exposure,
): Panel | undefined {
  const drawn = panels.filter(hasSomething);
  return poseOn(drawn, frame, exposure) ?? drawn.at(-1);
}

function hasSomething({ ink, marks }: Panel): boolean {
  return VIEWS.some((view) => ink[view].length > 0 || Object.keys(marks[view]).length > 0);
}
