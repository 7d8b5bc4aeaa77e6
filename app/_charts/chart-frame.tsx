"use client";
import { type ReactNode, useState } from "react";
import { Dialog } from "../_controls";
import { charts, common } from "../_words";
import styles from "./charts.module.css";

export interface ChartFrameProps {
  readonly name: string;
  /** What the chart shows, in a few words. */
  readonly title: string;
  /** Pixels. */
  readonly width: number;
  readonly height: number;
  /** The same in figures; null while there are none. */
  readonly table: ReactNode;
  readonly children: ReactNode;
}

/**
 * The ground a chart lies on, and its name at the left edge, which stays as the strip is moved. The name
 * opens the chart as a table; whoever reads with their ears has the table at hand already.
 */
export function ChartFrame({ name, title, width, height, table, children }: ChartFrameProps) {
  const [open, setOpen] = useState(false);
  return (
    <figure className={styles.chart} style={{ width, height }}>
      {children}
      <figcaption className={styles.name}>
        {table === null ? (
          name
        ) : (
          <button
            type="button"
            aria-label={charts.asTable(name)}
            title={charts.asTable(name)}
            onClick={() => setOpen(true)}
            onPointerDown={(event) => event.stopPropagation()}
          >
            {name}
            <svg viewBox="0 0 12 12" width="11" height="11" aria-hidden="true">
              <path d="M.5.5h11v11H.5zM.5 4.5h11M.5 8h11M5 .5v11" />
            </svg>
          </button>
        )}
      </figcaption>
      {table !== null && !open && <div className="heard">{table}</div>}
      {open && (
        <Dialog title={title} closeLabel={common.close} onClose={() => setOpen(false)}>
          <div className={styles.table}>{table}</div>
        </Dialog>
      )}
    </figure>
  );
}
