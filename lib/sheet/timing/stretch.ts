import {
  type Exposure,
  type Frame,
  isStepPose,
  nearestDrawn,
  spreadFrames,
  TRADE_SHARES,
} from "../../motion";
import type { PanelId } from "../sheet";
import type { TimedPanel } from "./sections";

/** Frames from one pose to another that leave so many between them a drawn frame each. */
export function leastLength(between: number, exposure: Exposure): number {
  return (between + 1) * exposure;
}

interface Stretch {
  readonly contact: TimedPanel;
  readonly inner: readonly TimedPanel[];
  readonly from: Frame;
  readonly exposure: Exposure;
}

/**
 * Places what lies between two contacts: each pose keeps its share of the time between them. A pose that
 * stands on the frame nearest to its even share has that share, so that rounding does not add up.
 */
export function placeBetween(
  frames: Map<PanelId, Frame>,
  {
    contact,
    inner,
    next,
    from,
    to,
    exposure,
  }: Stretch & { readonly next: TimedPanel; readonly to: Frame },
): void {
  const length = next.frame - contact.frame;
  const shareOf = ({ frame, pose }: TimedPanel, at: number): number => {
    if (!(length > 0)) return (at + 1) / (inner.length + 1);
    const share = (frame - contact.frame) / length;
    const even = isStepPose(pose) ? TRADE_SHARES[pose] : share;
    return Math.abs(even - share) * length <= exposure / 2 + 1e-9 ? even : share;
  };
  const shift = from - contact.frame;
  const moments = inner.map((panel, at) => ({
    moment: from + shareOf(panel, at) * (to - from),
    // Moved as a whole, a step keeps every frame, also of two that are equally near.
    ...(to - from === length ? { now: panel.frame + shift } : {}),
  }));
  put(frames, inner, spreadFrames(moments, { from, to, exposure }));
}

/** Places what follows the last contact, which no next one bounds. */
export function placeBehind(
  frames: Map<PanelId, Frame>,
  { contact, inner, from, exposure, ratio }: Stretch & { readonly ratio: number },
): void {
  const moments = inner.map(({ frame }) => ({ moment: from + (frame - contact.frame) * ratio }));
  const furthest = nearestDrawn(moments.at(-1)?.moment ?? from, exposure);
  const to = furthest + leastLength(inner.length, exposure);
  put(frames, inner, spreadFrames(moments, { from, to, exposure }));
}

function put(
  frames: Map<PanelId, Frame>,
  panels: readonly TimedPanel[],
  placed: readonly Frame[],
): void {
  panels.forEach(({ id, frame }, at) => {
    frames.set(id, placed[at] ?? frame);
  });
}
