"use client";
import { type ComponentType, memo } from "react";
import { PANEL } from "../../lib/body";
import type { CheckId } from "../../lib/gait";
import { useReview } from "../_room";
import { type LayerProps, useWorkspace } from "../_workspace";
import { HipGap } from "./hip-gap";
import styles from "./layer.module.css";
import type { PointerProps } from "./pointer-props";
import { PosePointer } from "./pose-pointer";
import { seenAt } from "./seen-at";
import { SlipArrow } from "./slip-arrow";
import { SpotRings } from "./spot-rings";

/** What points at a remark; null for what belongs to time, which is shown under the ruler. */
const POINTERS: Readonly<Record<CheckId, ComponentType<PointerProps> | null>> = {
  "missing-pose": null,
  "pose-order": null,
  "hip-order": HipGap,
  "hip-range": null,
  "weight-side": PosePointer,
  "weight-front": PosePointer,
  slide: SlipArrow,
  float: PosePointer,
  sink: PosePointer,
  "foot-roll": PosePointer,
  clearance: null,
  "limb-length": null,
  reach: null,
  knee: null,
  snap: null,
  gaps: null,
  symmetry: PosePointer,
  loop: null,
  hitch: null,
  opposition: null,
  tempo: null,
  width: null,
  views: null,
  sides: null,
  "lead-in": null,
};

/** Remarks on the drawing, where they happen. For the eye: the margin has the same in words. */
export const RemarkLayer = memo(function RemarkLayer({ panel, view, width }: LayerProps) {
  const review = useReview();
  const rank = useWorkspace((workspace) => workspace.remark);
  const found = seenAt(review, panel.id);
  const pointed = rank === null ? undefined : review.remarks[rank];
  const rings = pointed?.spots.filter((spot) => spot.panel === panel.id && spot.view === view);
  if (found.length === 0 && (rings === undefined || rings.length === 0)) return null;
  const pixel = PANEL.width / width;
  return (
    <svg
      className={styles.layer}
      viewBox={`0 0 ${PANEL.width} ${PANEL.height}`}
      aria-hidden="true"
      focusable="false"
    >
      {found.map((remark) => {
        const props = { remark, panel, view, pixel, pointed: remark === pointed };
        const key = `${remark.check} ${remark.title} ${remark.panels.join(" ")}`;
        const Pointer = POINTERS[remark.check];
        return Pointer === null ? null : <Pointer key={key} {...props} />;
      })}
      {rings?.map(({ joints }) => (
        <SpotRings
          key={joints.join(" ")}
          marks={panel.marks[view]}
          joints={joints}
          level={pointed?.level ?? "shows"}
          pixel={pixel}
        />
      ))}
    </svg>
  );
});
