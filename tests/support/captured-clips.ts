import { existsSync, readFileSync } from "node:fs";
import type { Walk } from "../../lib/gait";
import { type CapturedStep, type CapturedWalk, capturedWalk } from "./captured";

/** Where the whole captured clips lie on a machine that has them. */
export const CAPTURED_POSES = new URL(
  "../../../shared/reference/walks/poses.json",
  import.meta.url,
);
const CAPTURED_TRUTH = new URL("../../../shared/reference/walks/truth.json", import.meta.url);

/** A captured clip as a walk, and what was measured on its whole motion. */
export interface CapturedClip {
  readonly clip: string;
  readonly walk: Walk;
  readonly captured: CapturedWalk;
  readonly truth: ClipTruth;
}

/** Metres, metres a second, 120 frames a second; shares of a step where they are called so. */
export interface ClipTruth {
  readonly plain: boolean;
  readonly leg_length: number;
  readonly speed: number;
  readonly froude: number;
  readonly steps: readonly StepTruth[];
  readonly strides: readonly StrideTruth[];
}

export interface StepTruth {
  readonly frames: number;
  readonly frac: { readonly passing: number; readonly down: number; readonly up: number };
  readonly hip_y: Readonly<Record<"contact" | "down" | "passing" | "up" | "next_contact", number>>;
  readonly com_y: Readonly<Record<"contact" | "down" | "passing" | "up" | "next_contact", number>>;
  readonly step_length?: number;
  readonly step_width?: number;
  readonly step_length_at_next_contact: number;
  readonly double_support_frac?: number;
  readonly passing_pose: Readonly<Record<string, number>>;
  readonly contact_pose: Readonly<Record<string, number>>;
}

export interface StrideTruth {
  readonly foot: "L" | "R";
  readonly from: number;
  readonly frames: number;
  readonly length: number;
  readonly speed: number;
  readonly stance_share?: number;
  readonly hip_lateral_range: number;
  readonly hip_vertical_range: number;
}

/** Every captured clip, plain or not; none where they are not at hand. */
export function capturedClips(): readonly CapturedClip[] {
  if (!existsSync(CAPTURED_POSES)) return [];
  const poses: Record<string, Clip> = JSON.parse(readFileSync(CAPTURED_POSES, "utf8"));
  const truths: Record<string, ClipTruth> = JSON.parse(readFileSync(CAPTURED_TRUTH, "utf8"));
  return Object.entries(poses).flatMap(([clip, { leg_length, fps, steps }]) => {
    const truth = truths[clip];
    if (truth === undefined) return [];
    const captured = {
      legLength: leg_length,
      framesPerSecond: fps,
      steps: steps.map(stepOf),
    };
    return [{ clip, captured, truth, walk: capturedWalk(captured) }];
  });
}

interface Clip {
  readonly leg_length: number;
  readonly fps: number;
  readonly steps: readonly {
    readonly lead_foot: "L" | "R";
    readonly poses: Record<string, { frame: number; points: Record<string, number[]> }>;
  }[];
}

function stepOf({ lead_foot, poses }: Clip["steps"][number]): CapturedStep {
  return {
    leadFoot: lead_foot === "L" ? "left" : "right",
    poses: Object.fromEntries(
      Object.entries(poses).map(([pose, { frame, points }]) => [
        pose,
        { frame, points, pelvisX: points.pelvis?.[0] ?? Number.NaN },
      ]),
    ),
  };
}
