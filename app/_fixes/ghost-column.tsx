"use client";
import type { Panel } from "../../lib/sheet";
import { GhostFigure } from "../_paper";
import { common, fixes as words } from "../_words";
import styles from "./fixes.module.css";

export interface GhostColumnProps {
  readonly panel: Panel;
  /** CSS pixels. */
  readonly left: number;
  readonly width: number;
  readonly paperHeight: number;
}

/** A panel that a fix would hang on the strip: its figure on two papers that are not there yet. */
export function GhostColumn({ panel, left, width, paperHeight }: GhostColumnProps) {
  const size = { width, height: paperHeight };
  return (
    <div className={styles.column} style={{ left, width }} data-ghost-column aria-hidden="true">
      <header>
        <b>{common.pose[panel.pose]}</b>
        <span>{words.fresh}</span>
      </header>
      {(["side", "front"] as const).map((view) => (
        <div key={view} className={styles.paper} style={size}>
          <GhostFigure marks={panel.marks[view]} width={width} look="to-be" />
        </div>
      ))}
    </div>
  );
}
