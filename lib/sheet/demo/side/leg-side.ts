import type { Side } from "../../../body";
import { curve } from "../hand/curve";
import { alongLimb, type LimbJoints, limbLines, limbOutline, type Station } from "../hand/limb";
import { thin, tone } from "../hand/part";
import type { Pencil } from "../hand/pencil";
import { add, between, times } from "../hand/vector";
import { BOOT_TOP, drawBoot } from "./boot-side";
import type { SideFigure } from "./side-figure";

/** Baggy trousers tucked into boots. The shin's way runs to where the boot begins. */
const TROUSERS: readonly Station[] = [
  [0, 0.14, 0.15],
  [0.35, 0.13, 0.13],
  [0.72, 0.11, 0.104],
  [1, 0.094, 0.084],
  [1.3, 0.08, 0.09],
  [1.62, 0.08, 0.102],
  [1.86, 0.087, 0.104],
  [2, 0.072, 0.082],
];
const SHANK = 0.44; // leg lengths

export function drawLeg(pencil: Pencil, figure: SideFigure, side: Side): void {
  const near = side === "right";
  const firm = near ? 0.7 : 0.52;
  drawBoot(pencil, figure, side, firm);
  const [hip, knee, ankle] = [
    figure.of(side, "hip"),
    figure.of(side, "knee"),
    figure.of(side, "ankle"),
  ];
  const joints: LimbJoints = [hip, knee, between(ankle, knee, (BOOT_TOP - 0.01) / SHANK)];
  const lines = limbLines(joints, TROUSERS);
  pencil.line(lines.front, { firm, outside: "left" });
  pencil.line(lines.back, { firm, outside: "right" });
  drawFolds(pencil, joints, firm);
  const outline = limbOutline(lines);
  if (near) shadeUnderCoat(pencil, joints);
  else tone(pencil, outline, 0.056, 0.34);
  pencil.solid(outline);
}

/** Where the cloth gives: behind the knee, and where it bags over the boot. */
function drawFolds(pencil: Pencil, joints: LimbJoints, firm: number): void {
  const edge = (along: number, aside: number) => {
    const { point, normal } = alongLimb(joints, along);
    return add(point, times(normal, aside));
  };
  const fold = (along: number, from: number, to: number, sag: number) =>
    pencil.line(
      curve([edge(along, from), edge(along + sag, (from + to) / 2), edge(along + sag * 0.4, to)]),
      thin(firm * 0.64),
    );
  fold(0.93, -0.078, 0.02, 0.08);
  fold(1.07, -0.074, -0.005, 0.02);
  fold(1.7, -0.1, -0.02, 0.12);
  fold(1.78, 0.082, 0.02, 0.1);
}

/** The coat's shadow on the thigh. */
function shadeUnderCoat(pencil: Pencil, joints: LimbJoints): void {
  const edge = (along: number, aside: number) => {
    const { point, normal } = alongLimb(joints, along);
    return add(point, times(normal, aside));
  };
  tone(
    pencil,
    [edge(0.45, 0.12), edge(0.95, 0.03), edge(0.98, -0.07), edge(0.45, -0.12)],
    0.05,
    0.3,
  );
}
