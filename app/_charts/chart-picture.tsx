import { type ReactNode, useId } from "react";
import styles from "./charts.module.css";

export interface ChartPictureProps {
  readonly title: string;
  /** What the picture shows, in a sentence. */
  readonly summary: string;
  /** Pixels. */
  readonly width: number;
  readonly height: number;
  readonly children: ReactNode;
}

/** A chart's picture, with its name and what it shows for whoever does not see it. */
export function ChartPicture({ title, summary, width, height, children }: ChartPictureProps) {
  const titleId = useId();
  const summaryId = useId();
  return (
    <svg
      role="img"
      aria-labelledby={titleId}
      aria-describedby={summaryId}
      width={width}
      height={height}
      className={styles.picture}
    >
      <title id={titleId}>{title}</title>
      <desc id={summaryId}>{summary}</desc>
      {children}
    </svg>
  );
}
