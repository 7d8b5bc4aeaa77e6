import { PANEL } from "../../lib/body";
import { useReview, useSheet } from "../_room";
import { remarks as words } from "../_words";
import { ArrowHead } from "./arrow-head";
import styles from "./layer.module.css";
import { LayerLabel } from "./layer-label";
import type { PointerProps } from "./pointer-props";
import { slipShape } from "./slip-shape";

const UNDER_GROUND = PANEL.height - PANEL.groundY; // panel units
const BELOW_PX = 9; // the arrow runs under the ground line, clear of the foot
const BELOW_SHARE = 0.3; // of what lies under the ground, where the paper is small

/** A slip: the dashed footprint where the foot was put down, and an arrow to where it is now. */
export function SlipArrow({ remark, panel, view, pixel, pointed }: PointerProps) {
  const leg = useReview().legLength;
  const pace = useSheet((sheet) => sheet.head);
  const earlier = useSheet((sheet) => sheet.panels.find(({ id }) => id === remark.panels[0]));
  const joint = remark.spots.at(-1)?.joints[0];
  if (view !== "side" || earlier === undefined || joint === undefined) return null;
  if (leg.kind === "cannot-tell" || remark.side === null) return null;
  const slip = { earlier, panel, side: remark.side, joint, pace, legUnits: leg.value };
  const shape = slipShape(slip);
  if (shape === null) return null;
  const y = PANEL.groundY + Math.min(BELOW_PX * pixel, BELOW_SHARE * UNDER_GROUND);
  const amount = `${(100 * Math.abs(remark.measured.value)).toFixed(1)} %`;
  const line = (pointed ? 2.6 : 1.8) * pixel;
  return (
    <g className={styles.pointer} data-level={remark.level} data-pointed={pointed}>
      {shape.footprint !== null && (
        <polygon
          className={styles.footprint}
          points={shape.footprint.map((corner) => `${corner.x},${corner.y}`).join(" ")}
          strokeWidth={line}
          strokeDasharray={`${5 * pixel} ${3.5 * pixel}`}
        />
      )}
      <line
        x1={shape.from.x}
        x2={shape.to.x}
        y1={y}
        y2={y}
        strokeWidth={line}
        className={styles.line}
      />
      <ArrowHead from={{ x: shape.from.x, y }} to={{ x: shape.to.x, y }} size={7 * pixel} />
      <LayerLabel
        at={{ x: (shape.from.x + shape.to.x) / 2, y: y + 18 * pixel }}
        pixel={pixel}
        text={remark.measured.value < 0 ? words.slidesBack(amount) : words.slips(amount)}
      />
    </g>
  );
}
