import type { ReactNode } from "react";
import styles from "./charts.module.css";

export interface ChartFrameProps {
  readonly name: string;
  /** Pixels. */
  readonly width: number;
  readonly height: number;
  readonly children: ReactNode;
}

/** The ground a chart lies on, and its name at the left edge, which stays as the strip is moved. */
export function ChartFrame({ name, width, height, children }: ChartFrameProps) {
  return (
    <figure className={styles.chart} style={{ width, height }}>
      {children}
      <figcaption className={styles.name}>{name}</figcaption>
    </figure>
  );
}
