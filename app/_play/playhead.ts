import { VIEWS } from "../../lib/geometry";
import { type Exposure, type Frame, poseOn } from "../../lib/motion";
import type { Panel, Sheet } from "../../lib/sheet";

/** What play runs through: a way in, once, and then a loop. */
export interface Run {
  readonly first: Frame;
  /** The loop's first frame, and how many frames it has. */
  readonly loopFrom: Frame;
  readonly loopFrames: number;
}

/**
 * The run of a strip. The loop closes on the pose at its end, which is its first pose again and so is
 * not shown twice. Where the strip ends elsewhere than the loop, its own end serves: a last pose that
 * is not the first again is shown for as long as the one before it.
 *
 * Units:   frames
 * Errors:  none; an empty strip has no run
 */
export function runOf({ panels, head }: Sheet): Run | null {
  const first = panels[0]?.frame;
  const last = panels.at(-1);
  if (first === undefined || last === undefined) return null;
  const opens = panels.find(({ frame }) => frame === head.loop.from) ?? panels[0];
  const loopFrom = opens?.frame ?? first;
  const closes = last.frame === head.loop.to || samePose(opens, last);
  const tail = closes ? 0 : Math.max(1, last.frame - (panels.at(-2)?.frame ?? last.frame));
  return { first, loopFrom, loopFrames: Math.max(1, last.frame - loopFrom + tail) };
}

function samePose(one: Panel | undefined, other: Panel): boolean {
  return one !== undefined && one.pose === other.pose && one.weightOn === other.weightOn;
}

/**
 * The frame that is on at a moment. It is counted from the start, so no error adds up.
 *
 * Units:   seconds since the start, frames a second → frame
 */
export function frameAt(run: Run, secondsIn: number, framesPerSecond: number): Frame {
  // Half a thousandth of a frame: a clock that says 2.9999999 means the third.
  const count = Math.max(0, Math.floor(secondsIn * framesPerSecond + 0.0005));
  const wayIn = run.loopFrom - run.first;
  if (count < wayIn) return run.first + count;
  return run.loopFrom + ((count - wayIn) % run.loopFrames);
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
