import { type JointName, type LimbJoint, limbJoint, type Side } from "../../lib/body";
import type { Point } from "../../lib/geometry";
import { JointDot } from "./joint-dot";
import styles from "./pictures.module.css";
import type { Spots } from "./spots";

export interface FigureProps {
  readonly spots: Spots;
  /** How far off it is: the figure that is spoken of, or one it is held against. */
  readonly ghost?: boolean;
  /** Joints whose marks are shown, on both sides. */
  readonly marks?: readonly LimbJoint[];
  readonly head?: number;
  /** Only what is below the hips, for a look from near by. */
  readonly legs?: boolean;
}

const LEG: readonly LimbJoint[] = ["hip", "knee", "ankle"];
const ARM: readonly LimbJoint[] = ["shoulder", "elbow", "wrist"];

/** A plain figure from either view: the far limbs lie under the trunk, the near ones over it. */
export function Figure({ spots, ghost = false, marks = [], head = 9, legs = false }: FigureProps) {
  const hips = middle(spots("left-hip"), spots("right-hip"));
  return (
    <g className={ghost ? styles.ghost : styles.figure}>
      <Limbs spots={spots} side="left" legs={legs} />
      <path d={line([spots("left-hip"), spots("right-hip")])} />
      {!legs && <Trunk spots={spots} hips={hips} head={head} />}
      <Limbs spots={spots} side="right" legs={legs} />
      {(["left", "right"] as const).flatMap((side) =>
        marks.map((joint) => (
          <JointDot key={side + joint} side={side} at={spots(limbJoint(side, joint))} />
        )),
      )}
    </g>
  );
}

interface TrunkProps {
  readonly spots: Spots;
  readonly hips: Point;
  readonly head: number;
}

function Trunk({ spots, hips, head }: TrunkProps) {
  const [left, right, crown] = [spots("left-shoulder"), spots("right-shoulder"), spots("head")];
  return (
    <>
      <path d={line([hips, middle(left, right), crown])} />
      <path d={line([left, right])} />
      <circle className={styles.head} cx={crown.x} cy={crown.y - head * 0.2} r={head} />
    </>
  );
}

interface LimbsProps {
  readonly spots: Spots;
  readonly side: Side;
  readonly legs: boolean;
}

function Limbs({ spots, side, legs }: LimbsProps) {
  const at = (joint: LimbJoint) => spots(limbJoint(side, joint) as JointName);
  return (
    <g className={side === "left" ? styles.far : styles.near}>
      {!legs && <path d={line(ARM.map(at))} />}
      <path d={line(LEG.map(at))} />
      <path d={footLine(spots, side)} />
    </g>
  );
}

/** The foot from the ankle about heel, ball and toe. */
export function footLine(spots: Spots, side: Side): string {
  const at = (joint: LimbJoint) => spots(limbJoint(side, joint));
  return `${line([at("ankle"), at("heel"), at("ball"), at("toe"), at("ankle")])}Z`;
}

export function line(points: readonly Point[]): string {
  return points.map(({ x, y }, nth) => `${nth === 0 ? "M" : "L"}${round(x)} ${round(y)}`).join("");
}

const round = (value: number) => Number(value.toFixed(1));

function middle(a: Point, b: Point): Point {
  return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
}
