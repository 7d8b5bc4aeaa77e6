"use client";
import type { Frame } from "../../lib/motion";
import type { Panel, PanelId } from "../../lib/sheet";
import { useWorkspace } from "../_workspace";
import styles from "./stage.module.css";
import { STRIP, type StripGeometry } from "./strip-geometry";

export interface StemsProps {
  /** In the order of their columns, those that are not there yet among them. */
  readonly panels: readonly Panel[];
  readonly added: readonly Panel[];
  readonly geometry: StripGeometry;
  readonly frameOf: (panel: Panel) => Frame;
  /** Where panels would move to, while that is looked at. */
  readonly feetToBe: ReadonlyMap<PanelId, Frame>;
}

const TO_THE_FOOT = 9; // px into the ruler, where the foot's dot begins

/** The stems: from under each panel to its frame. Uneven timing is seen as leaning before it is read. */
export function Stems({ panels, added, geometry, frameOf, feetToBe }: StemsProps) {
  const inHand = useWorkspace((workspace) => workspace.panel);
  const height = STRIP.stems;
  return (
    <svg className={styles.stems} width={geometry.width} height={height} aria-hidden="true">
      {panels.map((panel, index) => {
        const toBe = feetToBe.get(panel.id);
        const from = geometry.stemX(index);
        return (
          <g key={panel.id}>
            {!added.includes(panel) && (
              <path
                d={stem(from, geometry.frameX(frameOf(panel)), height)}
                data-in-hand={panel.id === inHand}
                data-contact={panel.pose === "contact"}
              />
            )}
            {toBe !== undefined && (
              <path d={stem(from, geometry.frameX(toBe), height)} data-ghost="true" />
            )}
          </g>
        );
      })}
    </svg>
  );
}

function stem(from: number, to: number, height: number): string {
  const bend = height * 0.55;
  return `M${from},0 C${from},${bend} ${to},${height - bend} ${to},${height + TO_THE_FOOT}`;
}
