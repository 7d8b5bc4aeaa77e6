import { type Box, LABEL } from "../../lib/export";
import type { Level } from "../../lib/gait";
import styles from "./layer.module.css";

export interface LayerLabelProps {
  readonly text: string;
  /** Where the words stand, panel units. */
  readonly box: Box;
  readonly level: Level;
  readonly pixel: number;
  /** A number alone, with its level's sign before it: the remark is drawn when it is pointed at. */
  readonly numbered: boolean;
}

/** A few words on the drawing, or the sign and the number of a remark that is not drawn whole. */
export function LayerLabel({ text, box, level, pixel, numbered }: LayerLabelProps) {
  const size = box.height / LABEL.height;
  const sign = LABEL.sign * pixel;
  const x = box.x + LABEL.aside * pixel;
  return (
    <g className={styles.pointer} data-level={level} data-number={numbered}>
      {numbered && (
        <path
          className={styles.sign}
          data-level={level}
          strokeWidth={1.6 * pixel}
          d={triangle(x, box.y + 0.18 * box.height, 0.72 * sign)}
        />
      )}
      <text
        className={styles.label}
        x={x + (numbered ? sign : 0)}
        y={box.y + box.height - 0.28 * size}
        fontSize={size}
        strokeWidth={4 * pixel}
      >
        {text}
      </text>
    </g>
  );
}

function triangle(x: number, y: number, width: number): string {
  return `M${x + width / 2} ${y}l${width / 2} ${0.85 * width}h${-width}z`;
}
