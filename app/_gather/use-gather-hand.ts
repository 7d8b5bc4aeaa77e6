"use client";
import { type RefObject, useEffect, useLayoutEffect, useRef } from "react";
import { PANEL } from "../../lib/body";
import type { InkStroke } from "../../lib/sheet";
import { useRoom } from "../_room";
import { type PaperName, useWorkspaceStore } from "../_workspace";
import { ROOM_FOR_HANDLES, transformOf } from "./gather-box";
import { shapeGathered } from "./gather-deeds";
import { openGatherHand } from "./gather-hand";
import { listenToGathering } from "./gather-pointer";

export interface GatherHandParts {
  readonly bench: RefObject<HTMLElement | null>;
  readonly held: RefObject<SVGGElement | null>;
  readonly outline: RefObject<SVGPathElement | null>;
  readonly paper: PaperName;
  readonly ink: readonly InkStroke[];
  /** What of the ink is gathered. */
  readonly strokes: readonly InkStroke[];
  readonly width: number;
}

/** The hand that gathers on one paper. What it holds is moved on screen without React. */
export function useGatherHand(parts: GatherHandParts): void {
  const room = useRoom();
  const workspace = useWorkspaceStore();
  const now = useRef(parts);
  useLayoutEffect(() => {
    now.current = parts;
  });
  const { bench } = parts;
  const { panel, view } = parts.paper;

  useEffect(() => {
    const element = bench.current;
    if (element === null) return;
    const down = (is: boolean) => {
      workspace.getState().setPenDown(is);
      if (is) room.review.hold();
      else room.review.release();
    };
    const hand = openGatherHand({
      ink: () => now.current.ink,
      gathered: () => now.current.strokes,
      pixel: () => PANEL.width / now.current.width,
      handles: () => now.current.width >= ROOM_FOR_HANDLES,
      byBox: () => workspace.getState().gatherBy === "box",
      showOutline(way) {
        const line = way === null ? "" : way.map(({ x, y }) => `${x} ${y}`).join("L");
        now.current.outline.current?.setAttribute("d", line === "" ? "" : `M${line}Z`);
      },
      showShaping(shaping) {
        const group = now.current.held.current;
        if (shaping === null) group?.removeAttribute("transform");
        else group?.setAttribute("transform", transformOf(shaping));
      },
      showOver(shaping) {
        // The other paper is another component's; while strokes are held over it, it has this group.
        const group = document.querySelector("[data-held-over]");
        group?.setAttribute("transform", transformOf(shaping));
      },
      holdOver(paper) {
        const { gatherOver, holdOver } = workspace.getState();
        const same = gatherOver?.panel === paper?.panel && gatherOver?.view === paper?.view;
        if (!same) holdOver(paper);
      },
      begin: () => down(true),
      end: () => down(false),
      gather(strokes) {
        const ids = strokes.map(({ id }) => id);
        workspace.getState().gather(ids.length === 0 ? null : { panel, view, ids });
        if (ids.length > 0) element.focus({ preventScroll: true });
      },
      shape: (shaping, to) => shapeGathered(room, workspace, shaping, to),
    });
    return listenToGathering(element, { panel, view }, hand);
  }, [room, workspace, bench, panel, view]);
}
