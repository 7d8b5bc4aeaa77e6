import { limbJoint, type Side } from "../../lib/body";
import { footLine, line } from "./figure";
import { JointDot } from "./joint-dot";
import styles from "./pictures.module.css";
import type { Spots } from "./spots";

export interface FootProps {
  readonly spots: Spots;
  readonly side: Side;
  readonly ghost?: boolean;
  readonly marked?: boolean;
}

/** A foot near by, with the shank it hangs on. */
export function Foot({ spots, side, ghost = false, marked = false }: FootProps) {
  const [ankle, knee] = [spots(limbJoint(side, "ankle")), spots(limbJoint(side, "knee"))];
  const shin = {
    x: ankle.x + (knee.x - ankle.x) * SHOWN,
    y: ankle.y + (knee.y - ankle.y) * SHOWN,
  };
  return (
    <g className={ghost ? styles.ghost : styles.figure}>
      <path d={line([shin, ankle])} />
      <path className={styles.foot} d={footLine(spots, side)} />
      {marked &&
        (["heel", "ball", "toe"] as const).map((joint) => (
          <JointDot key={joint} side={side} at={spots(limbJoint(side, joint))} />
        ))}
    </g>
  );
}

const SHOWN = 0.45; // of the shank
