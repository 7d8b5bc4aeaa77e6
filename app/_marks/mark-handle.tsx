"use client";
import { memo } from "react";
import { type JointName, PANEL } from "../../lib/body";
import type { View } from "../../lib/geometry";
import { marks as words } from "../_words";
import { percentOf } from "./figure-painter";
import styles from "./marks.module.css";

export interface MarkHandleProps {
  readonly joint: JointName;
  readonly view: View;
  /** Panel units. */
  readonly x: number;
  readonly y: number;
  /** CSS pixels across its invisible target. */
  readonly size: number;
  readonly named: boolean;
  /** The next tap moves it. */
  readonly taken: boolean;
  /** One paper at a time is walked through with Tab. */
  readonly inOrder: boolean;
  readonly onTake: (joint: JointName) => void;
}

const NAME_TURNS = 0.6; // share of the paper's width from where on a name stands on the left

/** What is taken hold of at a mark: the target around it, its name, its focus. */
export const MarkHandle = memo(function MarkHandle(props: MarkHandleProps) {
  const { joint, view, x, y, size, named, taken, inOrder, onTake } = props;
  return (
    <button
      type="button"
      className={styles.handle}
      style={{
        left: percentOf(x, PANEL.width),
        top: percentOf(y, PANEL.height),
        width: size,
        height: size,
      }}
      data-joint={joint}
      aria-label={words.mark(joint, view, x, y)}
      aria-pressed={taken}
      tabIndex={inOrder ? 0 : -1}
      onClick={(event) => {
        // A pointer's tap has been seen to by the hand; this is Enter, Space, or an assistive tool.
        if (event.detail === 0) onTake(joint);
      }}
    >
      {named && (
        <span className={styles.name} data-turned={x > NAME_TURNS * PANEL.width} aria-hidden="true">
          {words.joint(joint)}
        </span>
      )}
    </button>
  );
});
