"use client";
import { type KeyboardEvent, type PointerEvent, useRef, useState } from "react";
import type { Frame } from "../../lib/motion";
import { amendHead, type Panel } from "../../lib/sheet";
import { useRoom, useSheet } from "../_room";
import { common, time } from "../_words";
import { nearestEnd, nextEnd, standing } from "./loop-ends";
import styles from "./time.module.css";

export interface LoopHandlesProps {
  readonly panels: readonly Panel[];
  readonly xOfFrame: (frame: Frame) => number;
  readonly frameAt: (x: number) => Frame;
  readonly mayDraw: boolean;
}

type End = "from" | "to";

/** Where the loop begins and ends: two marks on the ruler, moved from panel to panel. */
export function LoopHandles(props: LoopHandlesProps) {
  return (
    <>
      <LoopHandle {...props} end="from" />
      <LoopHandle {...props} end="to" />
    </>
  );
}

const STEPS: Readonly<Record<string, 1 | -1>> = {
  ArrowLeft: -1,
  ArrowDown: -1,
  ArrowRight: 1,
  ArrowUp: 1,
};

function LoopHandle({ panels, xOfFrame, frameAt, mayDraw, end }: LoopHandlesProps & { end: End }) {
  const { drawing } = useRoom();
  const loop = useSheet((sheet) => sheet.head.loop);
  const [held, setHeld] = useState<Frame | null>(null);
  const grip = useRef<number | null>(null);
  const frame = held ?? standing(panels, loop[end], end);
  const x = xOfFrame(frame);
  const other = end === "from" ? loop.to : loop.from;
  const write = (to: Frame) => {
    if (to !== loop[end]) amendHead(drawing, { loop: { ...loop, [end]: to } });
  };
  const take = (event: PointerEvent<HTMLElement>) => {
    event.stopPropagation();
    if (!mayDraw || event.button !== 0) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    grip.current = event.clientX - x;
  };
  const drag = (event: PointerEvent<HTMLElement>) => {
    if (grip.current === null) return;
    const wanted = frameAt(event.clientX - grip.current);
    setHeld(nearestEnd({ panels, end, other }, wanted) ?? frame);
  };
  const letGo = (keeps: boolean) => {
    if (keeps && held !== null) write(held);
    grip.current = null;
    setHeld(null);
  };
  const step = (event: KeyboardEvent<HTMLElement>) => {
    const by = STEPS[event.key];
    if (by === undefined || event.altKey || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    event.stopPropagation();
    const next = nextEnd({ panels, end, other }, frame, by);
    if (mayDraw && next !== null) write(next);
  };
  return (
    <div
      className={styles.loop}
      style={{ left: x }}
      role="slider"
      tabIndex={0}
      aria-label={time.loopEnd[end]}
      aria-valuenow={frame}
      aria-valuetext={common.frame(frame)}
      aria-disabled={!mayDraw}
      data-end={end}
      onPointerDown={take}
      onPointerMove={drag}
      onPointerUp={() => letGo(true)}
      onPointerCancel={() => letGo(false)}
      onKeyDown={step}
    >
      <svg viewBox="0 0 12 26" width="12" height="26" aria-hidden="true">
        <path d="M1 1h3v24H1zM6.5 1H8v24H6.5z" />
        <circle cx="10.6" cy="9" r="1.4" />
        <circle cx="10.6" cy="17" r="1.4" />
      </svg>
    </div>
  );
}
