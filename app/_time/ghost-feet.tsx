import type { Frame } from "../../lib/motion";
import type { Panel, PanelId } from "../../lib/sheet";
import styles from "./time.module.css";

export interface GhostFeetProps {
  readonly panels: readonly Panel[];
  readonly feetToBe: ReadonlyMap<PanelId, Frame>;
  readonly xOfFrame: (frame: Frame) => number;
  /** Pixels: the ruler's line, and the height of all. */
  readonly lineY: number;
  readonly width: number;
  readonly height: number;
}

const FOOT = 7; // px, radius
const CLOSEST = 22; // px between two numbers that can be read

/** Where feet would stand: dashed rings on the ruler, and their frames in a row of their own. */
export function GhostFeet(props: GhostFeetProps) {
  const { panels, feetToBe, xOfFrame, lineY, width, height } = props;
  const feet = panels.flatMap(({ id }) => {
    const frame = feetToBe.get(id);
    return frame === undefined ? [] : [{ id, frame, x: xOfFrame(frame) }];
  });
  let lastNumber = Number.NEGATIVE_INFINITY;
  const isReadable = (x: number): boolean => {
    if (x - lastNumber < CLOSEST) return false;
    lastNumber = x;
    return true;
  };
  return (
    <svg className={styles.ghosts} width={width} height={height} aria-hidden="true">
      {feet.map(({ id, frame, x }) => (
        <g key={id}>
          <circle cx={x} cy={lineY} r={FOOT} />
          {isReadable(x) && (
            <text x={x} y={height - 6} textAnchor="middle">
              {frame}
            </text>
          )}
        </g>
      ))}
    </svg>
  );
}
