import { type FigureSize, figureSizeOf, measuredSize, PANEL } from "../../body";
import { studyWalk } from "../study";
import type { Walk, WalkPanel } from "../walk";

/** A figure's sizes and what they were measured on. */
export interface Sized {
  readonly size: FigureSize;
  readonly legUnits: number;
  readonly sizedBy: "stand" | "poses" | "build";
}

/** The figure's sizes as some of a walk's panels have them, else its build's. */
export function sizeIn(walk: Walk, panels: readonly WalkPanel[]): Sized {
  const { leg } = studyWalk({ ...walk, panels }, "trade");
  const legUnits = leg.kind === "value" ? leg.value : PANEL.plainLeg;
  const plain = figureSizeOf(walk.build);
  if (leg.kind === "cannot-tell") return { size: plain, legUnits, sizedBy: "build" };
  const marked = leg.from === "stand" ? panels.find(({ pose }) => pose === "stand") : undefined;
  const drawn = { stand: marked?.marks ?? null, poses: panels.map(({ marks }) => marks) };
  const size = measuredSize(plain, drawn, legUnits);
  return { size, legUnits, sizedBy: marked === undefined ? "poses" : "stand" };
}
