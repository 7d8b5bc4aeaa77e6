"use client";
import { useWorkspace } from "../_workspace";
import styles from "./charts.module.css";
import { type FootfallCell, LANE_PX } from "./footfall-cells";
import { tellCell } from "./footfall-words";
import { useRove } from "./use-rove";

/** The chart's cells as buttons: focusing or pressing one takes its panel in hand. */
export function FootfallsButtons({ cells }: { readonly cells: readonly FootfallCell[] }) {
  const pickPanel = useWorkspace((workspace) => workspace.pickPanel);
  const inHand = useWorkspace((workspace) => workspace.panel);
  const rove = useRove(
    cells.map(({ key, side, panel }) => ({ key, panel, row: side })),
    inHand,
  );
  return (
    <div className={styles.points} {...rove.group}>
      {cells.map((cell) => (
        <button
          key={cell.key}
          type="button"
          className={styles.cell}
          style={{ left: cell.x, top: cell.y, width: cell.width, height: LANE_PX }}
          aria-label={tellCell(cell)}
          title={tellCell(cell)}
          {...rove.stop(cell.key)}
          onFocus={() => pickPanel(cell.panel)}
          onClick={() => pickPanel(cell.panel)}
          onPointerDown={(event) => event.stopPropagation()}
        />
      ))}
    </div>
  );
}
