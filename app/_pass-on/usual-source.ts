import { otherSide } from "../../lib/body";
import type { Panel } from "../../lib/sheet";
import type { PassOnDeed } from "../_workspace";

const drawn = ({ marks, ink }: Panel): boolean =>
  Object.keys(marks.side).length + Object.keys(marks.front).length > 0 ||
  ink.side.length + ink.front.length > 0;

/**
 * Where a pose usually comes from: the panel before that has one, or for a mirrored pose its partner
 * in the other step, else the nearest that has anything on it. Null when none has.
 */
export function usualSource(panels: readonly Panel[], to: Panel, deed: PassOnDeed): Panel | null {
  const others = panels
    .filter((panel) => panel.id !== to.id && drawn(panel))
    .toSorted((a, b) => nearness(a, to) - nearness(b, to));
  const before = others.find(({ frame }) => frame <= to.frame) ?? others[0] ?? null;
  if (deed !== "mirror-pose" || to.weightOn === null) return before;
  const side = otherSide(to.weightOn);
  return others.find(({ pose, weightOn }) => pose === to.pose && weightOn === side) ?? before;
}

const nearness = ({ frame }: Panel, to: Panel) => Math.abs(frame - to.frame); // frames
