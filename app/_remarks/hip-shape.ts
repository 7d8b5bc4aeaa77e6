import { PANEL } from "../../lib/body";
import type { Remark, Review } from "../../lib/gait";
import type { View } from "../../lib/geometry";

/** A hip-order remark on the paper where it is seen. Units: panel units, y down. */
export interface HipShape {
  readonly view: View;
  /** The hips' height here, and that of the pose they are held against. */
  readonly here: number;
  readonly there: number;
}

/** The two hip heights that a remark compares, as heights on the later panel's paper. */
export function hipShape(
  { panels }: Pick<Remark, "panels">,
  { hipCurve, legLength }: Pick<Review, "hipCurve" | "legLength">,
): HipShape | null {
  if (legLength.kind === "cannot-tell") return null;
  const heightOf = (id: string | undefined) => {
    const height = hipCurve.points.find((point) => point.panel === id)?.height;
    return height?.kind === "value" ? height : null;
  };
  const here = heightOf(panels.at(-1));
  const there = heightOf(panels.at(0));
  if (here === null || there === null) return null;
  const yOf = (height: number) => PANEL.groundY - height * legLength.value;
  return { view: here.view, here: yOf(here.value), there: yOf(there.value) };
}
