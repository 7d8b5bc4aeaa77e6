"use client";
import { memo } from "react";
import { PANEL } from "../../lib/body";
import type { LayerProps } from "../_workspace";
import { PencilSign } from "./pencil-sign";
import styles from "./pencils.module.css";
import { usePencils } from "./use-pencils";

const PENCIL_PX = { least: 16, most: 30 } as const;
const PENCIL_SHARE = 0.14; // of the paper's width: small on the strip, a hand's size at the desk

/** The others' pencils where they point on this paper. Nothing to hear, nothing to hit. */
export const PencilLayer = memo(function PencilLayer({ panel, view, width }: LayerProps) {
  const pencils = usePencils(panel.id, view);
  if (pencils.length === 0) return null;
  const size = Math.min(PENCIL_PX.most, Math.max(PENCIL_PX.least, width * PENCIL_SHARE));
  const scale = width / PANEL.width;
  return (
    <div className={styles.pencils} aria-hidden="true">
      {pencils.map(({ client, hue, x, y }) => (
        <div
          key={client}
          className={styles.pencil}
          data-pencil={client}
          style={{
            width: size,
            height: size,
            transform: `translate(${x * scale}px, ${y * scale - size}px)`,
          }}
        >
          <PencilSign hue={hue} />
        </div>
      ))}
    </div>
  );
});
