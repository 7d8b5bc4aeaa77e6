import type { JointName, Side } from "../../../lib/body";
import { remarkShape, shapeOn, WHOLE_VIEW } from "../../../lib/export";
import {
  type CheckId,
  placeOf,
  type Remark,
  reviewWalk,
  type Walk,
  type WalkPanel,
} from "../../../lib/gait";
import type { View } from "../../../lib/geometry";
import type { PanelName } from "../../support/walk";

export const LEG = 420; // panel units, in the built walk

export const GROUND = 1080;

export const foot = (side: Side) =>
  (["ankle", "heel", "ball", "toe"] as const).map((part): JointName => `${side}-${part}`);

export type Pointed = Pick<Remark, "check" | "side" | "spots" | "panels" | "measured" | "expected">;

/** A remark's shape on the panel where it is seen. */
export function shapeIn(judged: Walk, remark: Pointed, view: View = "side") {
  const { panels, load = 0 } = judged;
  const panel = panels.find(({ id }) => id === remark.panels.at(-1));
  if (panel === undefined) throw new Error("a remark is seen at a panel of its walk");
  const stretchOf = (one: WalkPanel) => ({ place: placeOf(one, judged), legLength: LEG });
  const on = shapeOn(remark, { panel, view, window: WHOLE_VIEW, panels, stretchOf, load });
  return { shape: remarkShape(remark, on), panel };
}

/** The shape of the first remark of a check, in the view it speaks of, and what it was measured by. */
export function shapeOf(judged: Walk, check: CheckId, view: View = "side") {
  const remark = reviewWalk(judged, "trade").remarks.find((one) => one.check === check);
  if (remark === undefined) throw new Error(`no ${check} was remarked`);
  return { ...shapeIn(judged, remark, view), remark };
}

export function leg(value: number) {
  return { value, plusMinus: 0, unit: "leg" as const };
}

export function remarkOf(
  check: CheckId,
  panels: readonly PanelName[],
  joints: readonly JointName[],
  view: View = "side",
): Pointed {
  const spots = panels.map((panel) => ({ panel, view, joints }));
  return { check, side: "left", panels, spots, measured: leg(0.1), expected: leg(0.05) };
}
