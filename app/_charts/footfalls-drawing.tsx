import { useId } from "react";
import { SIDES, type Side } from "../../lib/body";
import { charts } from "../_words";
import { ChartPicture } from "./chart-picture";
import styles from "./charts.module.css";
import { FOOTFALLS_PX, type FootfallCell, LANE_PX, laneY } from "./footfall-cells";
import { sumUpFootfalls } from "./footfall-words";

export interface FootfallsDrawingProps {
  readonly cells: readonly FootfallCell[];
  /** Pixels. */
  readonly width: number;
}

/**
 * The picture: flat is tall and full; heel and ball are lower, toe is lowest, and each is hatched its own way; air
 * is a line.
 */
export function FootfallsDrawing({ cells, width }: FootfallsDrawingProps) {
  const hatch = useId();
  const first = Math.min(...cells.map(({ x }) => x));
  const last = Math.max(...cells.map(({ x, width: wide }) => x + wide));
  return (
    <ChartPicture
      title={charts.footfallsTitle}
      summary={sumUpFootfalls(cells)}
      width={width}
      height={FOOTFALLS_PX}
    >
      <defs>
        {SIDES.map((side) => (
          <Hatches key={side} side={side} id={`${hatch}${side}`} />
        ))}
      </defs>
      {SIDES.map((side) => (
        <g key={side} className={styles.foot} data-side={side}>
          <SideMark side={side} x={first - 13} />
          <line x1={first} x2={last} y1={laneY(side) + GROUND} y2={laneY(side) + GROUND} />
          {cells
            .filter((cell) => cell.side === side)
            .map((cell) => (
              <Bar key={cell.key} cell={cell} hatch={`${hatch}${side}`} />
            ))}
        </g>
      ))}
    </ChartPicture>
  );
}

const GROUND = LANE_PX - 4; // px under a lane's top
/** How tall each bar is, px: the more of the foot is down, the taller. What cannot be told is as tall as any. */
const TALL = { flat: 17, untold: 17, heel: 10, ball: 10, toe: 6 } as const;

function Bar({ cell, hatch }: { readonly cell: FootfallCell; readonly hatch: string }) {
  const { state, x, y, width } = cell;
  if (state === "air") return null;
  const kind = state ?? "untold";
  const tall = TALL[kind];
  const size = { x: x + 0.5, y: y + GROUND - tall, width: Math.max(0, width - 1), height: tall };
  if (state === "flat") return <rect {...size} className={styles.flat} />;
  return (
    <g className={styles[kind]}>
      <rect {...size} style={{ fill: `url(#${hatch}${kind})` }} />
    </g>
  );
}

const SQUARE = 6; // px, a hatch's tile

/** Heel leans forward, ball leans back, toe stands upright; what cannot be told is a faint net of dots. */
function Hatches({ side, id }: { readonly side: Side; readonly id: string }) {
  const tile = { width: SQUARE, height: SQUARE, patternUnits: "userSpaceOnUse" } as const;
  return (
    <g className={styles.foot} data-side={side}>
      <pattern id={`${id}heel`} {...tile}>
        <path className={styles.stripe} d="M-1.5 1.5 1.5-1.5M0 6 6 0M4.5 7.5 7.5 4.5" />
      </pattern>
      <pattern id={`${id}ball`} {...tile}>
        <path className={styles.stripe} d="M4.5-1.5 7.5 1.5M0 0 6 6M-1.5 4.5 1.5 7.5" />
      </pattern>
      <pattern id={`${id}toe`} {...tile} width={SQUARE / 2}>
        <path className={styles.stripe} d="M1.5 0 1.5 6" />
      </pattern>
      <pattern id={`${id}untold`} {...tile}>
        <circle className={styles.speck} cx="3" cy="3" r="1" />
      </pattern>
    </g>
  );
}

const SIGN = 4.5; // px

/** ● left, ◆ right. */
function SideMark({ side, x }: { readonly side: Side; readonly x: number }) {
  const y = laneY(side) + LANE_PX / 2;
  if (side === "left") return <circle className={styles.flat} cx={x} cy={y} r={SIGN} />;
  const r = SIGN + 0.5;
  return (
    <path className={styles.flat} d={`M${x} ${y - r}L${x + r} ${y}L${x} ${y + r}L${x - r} ${y}z`} />
  );
}
