"use client";
import type { KeyboardEvent } from "react";
import { type JointName, PANEL } from "../../lib/body";
import type { Point, View } from "../../lib/geometry";
import { marks as words } from "../_words";
import { percentOf } from "./figure-painter";
import { nudgeOf } from "./mark-keys";
import styles from "./marks.module.css";

export interface GuessHandleProps {
  readonly joint: JointName;
  readonly view: View;
  /** Panel units. */
  readonly at: Point;
  /** CSS pixels across its invisible target. */
  readonly size: number;
  readonly onBring: (by: Point) => void;
  readonly onAccept: () => void;
}

/** The guess, for a hand without a pointer: arrows bring it where it belongs, Enter puts it down. */
export function GuessHandle({ joint, view, at, size, onBring, onAccept }: GuessHandleProps) {
  const press = (event: KeyboardEvent) => {
    const by = nudgeOf(event);
    if (by === null) return;
    event.preventDefault();
    event.stopPropagation(); // the board's arrows flip panels
    onBring(by);
  };
  return (
    <button
      type="button"
      className={`${styles.handle} ${styles.guessHandle}`}
      style={{
        left: percentOf(at.x, PANEL.width),
        top: percentOf(at.y, PANEL.height),
        width: size,
        height: size,
      }}
      data-guess={joint}
      aria-label={words.guess(joint, view, at.x, at.y)}
      onKeyDown={press}
      onClick={(event) => {
        // A pointer's tap has been seen to by the hand; this is Enter, Space, or an assistive tool.
        if (event.detail === 0) onAccept();
      }}
    />
  );
}
