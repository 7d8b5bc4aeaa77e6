"use client";
import { type RefObject, useEffect, useLayoutEffect, useMemo, useRef, useState } from "react";
import { PANEL } from "../../lib/body";
import { placeMark } from "../../lib/sheet";
import { handOf, sayPenDown } from "../_paper";
import { useRoom } from "../_room";
import { type LayerProps, useWorkspaceStore } from "../_workspace";
import { type HeldMark, type MarkHand, openMarkHand } from "./mark-hand";
import { listenToPointer } from "./mark-pointer";
import { markPrecision } from "./mark-precision";
import { nextJoint } from "./proposals";

/** The hand that marks one paper, listening to its pointer, and the mark it has on its way. */
export function useMarkHand(
  ref: RefObject<HTMLElement | null>,
  { panel, view, width }: Pick<LayerProps, "panel" | "view" | "width">,
): { readonly hand: MarkHand; readonly held: HeldMark | null } {
  const room = useRoom();
  const workspace = useWorkspaceStore();
  const [held, show] = useState<HeldMark | null>(null);
  const marks = panel.marks[view];
  const now = useRef({ marks, width });
  useLayoutEffect(() => {
    now.current = { marks, width };
  }, [marks, width]);
  const { id } = panel;

  const hand = useMemo(() => {
    return openMarkHand({
      marks: () => now.current.marks,
      pixel: () => PANEL.width / now.current.width,
      precision: () => markPrecision(now.current.width),
      inHand: () => workspace.getState().joint ?? nextJoint(now.current.marks, view),
      show,
      begin: () => sayPenDown(room, workspace, true),
      end: () => sayPenDown(room, workspace, false),
      place: (joint, mark) => {
        placeMark(room.drawing, id, view, joint, mark);
        if (workspace.getState().joint === joint) workspace.getState().takeJoint(null);
      },
      take: (joint) => {
        const { joint: taken, takeJoint } = workspace.getState();
        takeJoint(taken === joint ? null : joint);
      },
    });
  }, [room, workspace, id, view]);

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
