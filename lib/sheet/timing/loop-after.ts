import type { Frame } from "../../motion";
import type { PanelId, SheetHead } from "../sheet";
import type { TimedSheet } from "./time-plan";

type Loop = SheetHead["loop"];

/**
 * The loop after a panel moved: an end that stands on a panel goes along with it, unless another panel
 * stays there. Null where it stays, or would end before it starts.
 */
export function loopAfterSlide({ head, panels }: TimedSheet, id: PanelId, to: Frame): Loop | null {
  const from = panels.find((panel) => panel.id === id)?.frame;
  const isShared = panels.some((panel) => panel.id !== id && panel.frame === from);
  if (from === undefined || isShared) return null;
  const { loop } = head;
  const next = {
    from: loop.from === from ? to : loop.from,
    to: loop.to === from ? to : loop.to,
  };
  const isSame = next.from === loop.from && next.to === loop.to;
  return isSame || next.from > next.to ? null : next;
}

/** The loop after a panel was hung behind its end: it takes the new one in, unless some stood outside already. */
export function loopAfterAdd({ head, panels }: TimedSheet, frame: Frame): Loop | null {
  const { loop } = head;
  const endsWithLoop = panels.at(-1)?.frame === loop.to;
  return endsWithLoop && frame > loop.to ? { ...loop, to: frame } : null;
}
