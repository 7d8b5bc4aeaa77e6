"use client";
import { memo } from "react";
import { type JointName, limbJoint, markOf, SIDES, type ViewMarks } from "../../lib/body";
import type { View } from "../../lib/geometry";
import { common, marks as words } from "../_words";
import { sideOfJoint } from "./joint-side";
import { SideSign } from "./joint-sign";
import styles from "./picker.module.css";
import { CENTRE_ORDER, LIMB_ORDER } from "./proposals";

export interface JointGridProps {
  readonly view: View;
  readonly marks: ViewMarks;
  readonly taken: JointName | null;
  /** The joint that the next tap places. */
  readonly next: JointName | null;
  readonly onPick: (joint: JointName) => void;
}

const CENTRE: readonly JointName[] = [...CENTRE_ORDER, "load"];

/** A row a joint, a column a side, in the order they are proposed. */
export const JointGrid = memo(function JointGrid(props: JointGridProps) {
  const { quick, more } = LIMB_ORDER[props.view];
  return (
    <>
      <div className={styles.grid}>
        <div className={styles.head} aria-hidden="true">
          {SIDES.map((side) => (
            <span key={side}>{common.side[side]}</span>
          ))}
        </div>
        {[...quick, ...more].map((part) => (
          <fieldset key={part} className={styles.joint}>
            <legend>{words.part[part]}</legend>
            {SIDES.map((side) => (
              <Choice key={side} joint={limbJoint(side, part)} {...props} />
            ))}
          </fieldset>
        ))}
      </div>
      <fieldset className={styles.centre}>
        <legend className="heard">{words.centre}</legend>
        {CENTRE.map((joint) => (
          <Choice key={joint} joint={joint} {...props} named />
        ))}
      </fieldset>
    </>
  );
});

interface ChoiceProps extends JointGridProps {
  readonly joint: JointName;
  readonly named?: boolean;
}

function Choice({ joint, named = false, marks, taken, next, onPick }: ChoiceProps) {
  const placed = markOf(marks, joint) !== null;
  const state = placed ? "placed" : joint === next ? "next" : null;
  return (
    <button
      type="button"
      className={styles.choice}
      aria-label={words.choice(joint, state)}
      aria-pressed={joint === taken}
      data-next={joint === next}
      onClick={() => onPick(joint)}
    >
      {named ? words.joint(joint) : <SideSign side={sideOfJoint(joint)} />}
      <span className={styles.tick} aria-hidden="true">
        {placed ? "✓" : ""}
      </span>
    </button>
  );
}
