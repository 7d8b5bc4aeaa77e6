"use client";
import { type KeyboardEvent, type PointerEvent, useRef } from "react";
import { type Frame, nextDrawn } from "../../lib/motion";
import { type Panel, shotFrame, slidePanel } from "../../lib/sheet";
import { useRoom, useSheet } from "../_room";
import { common, strip } from "../_words";
import { useWorkspace } from "../_workspace";
import styles from "./stage.module.css";
import type { Feet } from "./use-feet";

export interface StemFootProps {
  readonly panel: Panel;
  readonly frame: Frame;
  readonly x: number;
  /** Its shot's number does not run into the one before. */
  readonly hasRoom: boolean;
  readonly frameAt: (x: number) => Frame;
  readonly feet: Feet;
  readonly mayDraw: boolean;
}

const STEPS: Readonly<Record<string, 1 | -1>> = {
  ArrowLeft: -1,
  ArrowDown: -1,
  ArrowRight: 1,
  ArrowUp: 1,
};

/** Where a stem stands on the ruler: drag it, or move it by arrow keys, and the frame changes. */
export function StemFoot({ panel, frame, x, hasRoom, frameAt, feet, mayDraw }: StemFootProps) {
  const room = useRoom();
  const inHand = useWorkspace((workspace) => workspace.panel === panel.id);
  const pickPanel = useWorkspace((workspace) => workspace.pickPanel);
  const grip = useRef<number | null>(null);
  const shot = useSheet(({ head }) =>
    head.firstFrame === undefined ? null : shotFrame(frame, head),
  );
  const told = panel.hold === 0 ? common.frame(frame) : strip.held(frame, panel.hold);
  const side = panel.weightOn === null ? "" : common.side[panel.weightOn];

  const take = (event: PointerEvent<HTMLElement>) => {
    pickPanel(panel.id);
    if (!mayDraw || event.button !== 0) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    grip.current = event.clientX - x;
  };
  const drag = (event: PointerEvent<HTMLElement>) => {
    if (grip.current !== null) feet.hold(panel.id, frameAt(event.clientX - grip.current));
  };
  const release = () => {
    if (grip.current !== null) feet.putDown();
    grip.current = null;
  };
  const letGo = () => {
    grip.current = null;
    feet.letGo();
  };
  const step = (event: KeyboardEvent<HTMLElement>) => {
    if (event.key === "Escape" && grip.current !== null) {
      event.preventDefault();
      letGo();
      return;
    }
    const by = STEPS[event.key];
    if (by === undefined || event.altKey || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    event.stopPropagation();
    const to = nextDrawn(frame, by, room.sheet.getSnapshot().head.exposure);
    if (mayDraw && to >= 1) slidePanel(room.drawing, panel.id, to);
  };
  return (
    <div
      className={styles.foot}
      style={{ left: x }}
      role="slider"
      tabIndex={0}
      aria-label={strip.stem(common.pose[panel.pose], side)}
      aria-valuenow={frame}
      aria-valuemin={1}
      aria-valuetext={shot === null ? told : strip.inShot(told, shot)}
      aria-disabled={!mayDraw}
      data-in-hand={inHand}
      data-contact={panel.pose === "contact"}
      onFocus={() => pickPanel(panel.id)}
      onPointerDown={take}
      onPointerMove={drag}
      onPointerUp={release}
      onPointerCancel={letGo}
      onKeyDown={step}
    >
      <i aria-hidden="true" />
      <b>{frame}</b>
      {shot !== null && hasRoom && <small>{shot}</small>}
    </div>
  );
}
