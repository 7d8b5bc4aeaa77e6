"use client";
import { type RefObject, useEffect, useLayoutEffect, useMemo, useRef, useState } from "react";
import { PANEL, type PoseMarks } from "../../lib/body";
import { type Panel, placeMark } from "../../lib/sheet";
import { handOf, sayPenDown } from "../_paper";
import { type Room, useRoom } from "../_room";
import { type LayerProps, useWorkspaceStore, type WorkspaceStore } from "../_workspace";
import { draggedPose } from "./dragged-pose";
import { type FigurePainter, openFigurePainter } from "./figure-painter";
import { focusMark } from "./focus-mark";
import { markAndGoOn } from "./go-on";
import { guessedMark } from "./guess";
import { landing } from "./landing";
import { type HeldMark, type MarkHand, openMarkHand } from "./mark-hand";
import { listenToPointer } from "./mark-pointer";
import { legOn, markPrecision } from "./mark-precision";
import { promptedJoint } from "./prompt";
import { nextJoint } from "./proposals";
import { standFootOf, withFollowing } from "./stand-foot";
import { writePose } from "./write-pose";

type Paper = Pick<LayerProps, "panel" | "view" | "width">;

/** The hand that marks one paper, listening to its pointer, and the new mark it has on its way. */
export function useMarkHand(
  ref: RefObject<HTMLElement | null>,
  paper: Paper,
): { readonly hand: MarkHand; readonly held: HeldMark | null } {
  const room = useRoom();
  const workspace = useWorkspaceStore();
  const [held, show] = useState<HeldMark | null>(null);
  const now = useRef(paper);
  useLayoutEffect(() => {
    now.current = paper;
  });
  const hand = useMemo(() => handOver(room, workspace, () => now.current, show), [room, workspace]);
  useEffect(() => {
    if (ref.current === null) return;
    const stop = listenToPointer(ref.current, handOf(room), hand);
    return () => {
      stop();
      hand.cancel();
    };
  }, [room, ref, hand]);
  return { hand, held };
}

/** A hand over one paper, which may be another size, or show the panel changed, at every question. */
function handOver(
  room: Room,
  workspace: WorkspaceStore,
  paper: () => Paper,
  show: (held: HeldMark | null) => void,
): MarkHand {
  const marks = () => paper().panel.marks[paper().view];
  const precision = () => markPrecision(paper().width, legOn(room.sheet.getSnapshot().panels));
  const whole = (swapped: boolean) => (workspace.getState().dragging === "figure") !== swapped;
  return openMarkHand({
    marks,
    precision,
    show,
    pixel: () => PANEL.width / paper().width,
    inHand: () => workspace.getState().joint ?? nextJoint(marks(), paper().view),
    guess() {
      const { panel, view } = paper();
      const joint = promptedJoint(marks(), view, workspace.getState().joint);
      return joint === null ? null : guessedMark(room.sheet.getSnapshot(), panel, view, joint);
    },
    landing: (joint, at) => landing(room.sheet.getSnapshot(), paper().panel, joint, at),
    dragged: (drag) => {
      const { panel, view } = paper();
      return draggedPose(panel, drag, { view, precision: precision(), whole: whole(drag.swapped) });
    },
    paint: paintOver(room, () => paper().panel),
    begin: () => sayPenDown(room, workspace, true),
    end: () => sayPenDown(room, workspace, false),
    place(joint, mark) {
      const { panel, view } = paper();
      markAndGoOn(room, workspace, { panel: panel.id, view }, () => {
        placeMark(room.drawing, panel.id, view, joint, mark);
        if (workspace.getState().joint === joint) workspace.getState().takeJoint(null);
      });
    },
    put({ joint, pose, swapped }) {
      const { panel, view } = paper();
      // Just placed, a figure is fitted to the ink; later the ink has to follow the figure.
      const fits = workspace.getState().fitting === panel.id;
      writePose(room, panel, pose, whole(swapped) && !fits);
      focusMark(panel.id, view, joint); // for the arrows to go on with it
    },
    take(joint) {
      const { joint: taken, takeJoint } = workspace.getState();
      takeJoint(taken === joint ? null : joint);
      focusMark(paper().panel.id, paper().view, joint);
    },
  });
}

/** Paints a panel's figure as it is dragged, and at last as it is on the sheet. */
function paintOver(room: Room, panel: () => Panel) {
  let painter: FigurePainter | null = null;
  return (pose: PoseMarks | null) => {
    const sheet = room.sheet.getSnapshot();
    const foot = standFootOf(sheet);
    const shown = ({ side, front }: PoseMarks) => ({
      side: withFollowing(side, "side", foot),
      front,
    });
    const { id, marks } = panel();
    const now = sheet.panels.find((one) => one.id === id)?.marks ?? marks;
    painter ??= openFigurePainter(id, shown(now));
    painter.paint(shown(pose ?? now));
    if (pose === null) painter = null;
  };
}
