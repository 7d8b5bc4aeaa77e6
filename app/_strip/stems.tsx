"use client";
import type { Frame } from "../../lib/motion";
import type { Panel } from "../../lib/sheet";
import { useWorkspace } from "../_workspace";
import styles from "./stage.module.css";
import { STRIP, type StripGeometry } from "./strip-geometry";

export interface StemsProps {
  readonly panels: readonly Panel[];
  readonly geometry: StripGeometry;
  readonly frameOf: (panel: Panel) => Frame;
}

const TO_THE_FOOT = 9; // px into the ruler, where the foot's dot begins

/** The stems: from under each panel to its frame. Uneven timing is seen as leaning before it is read. */
export function Stems({ panels, geometry, frameOf }: StemsProps) {
  const inHand = useWorkspace((workspace) => workspace.panel);
  const height = STRIP.stems;
  return (
    <svg className={styles.stems} width={geometry.width} height={height} aria-hidden="true">
      {panels.map((panel, index) => {
        const from = geometry.stemX(index);
        const to = geometry.frameX(frameOf(panel));
        const bend = height * 0.55;
        return (
          <path
            key={panel.id}
            d={`M${from},0 C${from},${bend} ${to},${height - bend} ${to},${height + TO_THE_FOOT}`}
            data-in-hand={panel.id === inHand}
            data-contact={panel.pose === "contact"}
          />
        );
      })}
    </svg>
  );
}
