"use client";
import { memo } from "react";
import { PANEL } from "../../lib/body";
import { useReview } from "../_room";
import { type LayerProps, useWorkspace } from "../_workspace";
import { HipGap } from "./hip-gap";
import styles from "./layer.module.css";
import { seenAt } from "./seen-at";
import { SlipArrow } from "./slip-arrow";
import { SpotRings } from "./spot-rings";

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
        const key = `${remark.check} ${remark.panels.join(" ")}`;
        if (remark.check === "slide") return <SlipArrow key={key} {...props} />;
        if (remark.check === "hip-order") return <HipGap key={key} {...props} />;
        return null; // what belongs to time is shown under the ruler
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
