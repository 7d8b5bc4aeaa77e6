import styles from "./pictures.module.css";

export interface LabelProps {
  readonly x: number;
  readonly y: number;
  readonly anchor?: "start" | "middle" | "end";
  /** What is measured is written in its colour; what stands about it is not. */
  readonly quiet?: boolean;
  readonly children: string;
}

/** A few words in a picture. */
export function Label({ x, y, anchor = "middle", quiet = false, children }: LabelProps) {
  return (
    <text className={quiet ? styles.quiet : styles.label} x={x} y={y} textAnchor={anchor}>
      {children}
    </text>
  );
}
