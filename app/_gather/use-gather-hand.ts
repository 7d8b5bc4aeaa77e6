"use client";
import { type RefObject, useEffect, useLayoutEffect, useRef } from "react";
import { PANEL } from "../../lib/body";
import type { Point } from "../../lib/geometry";
import type { InkStroke } from "../../lib/sheet";
import { handOf, sayPenDown } from "../_paper";
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
    const outline = openOutline((d) => now.current.outline.current?.setAttribute("d", d));
    const gathering = openGatherHand({
      ink: () => now.current.ink,
      gathered: () => now.current.strokes,
      pixel: () => PANEL.width / now.current.width,
      handles: () => now.current.width >= ROOM_FOR_HANDLES,
      byBox: () => workspace.getState().gatherBy === "box",
      adding: () => workspace.getState().gatherAdds,
      showOutline: (way) => outline.show(way),
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
      begin: () => sayPenDown(room, workspace, true),
      end: () => sayPenDown(room, workspace, false),
      gather(strokes) {
        const ids = strokes.map(({ id }) => id);
        workspace.getState().gather(ids.length === 0 ? null : { panel, view, ids });
      },
      shape: (shaping, to) => shapeGathered(room, workspace, shaping, to),
    });
    const self = { panel, view };
    return listenToGathering(element, { hand: handOf(room), self, gathering });
  }, [room, workspace, bench, panel, view]);
}

/** Shows the line drawn round strokes, at most once a frame: a long one is not cheap to write down. */
function openOutline(write: (d: string) => void) {
  let way: readonly Point[] | null = null;
  let asked = 0;
  function paint(): void {
    asked = 0;
    const line = (way ?? []).map(({ x, y }) => `${x.toFixed(1)} ${y.toFixed(1)}`).join("L");
    write(line === "" ? "" : `M${line}Z`);
  }
  return {
    show(next: readonly Point[] | null): void {
      way = next;
      if (asked === 0) asked = requestAnimationFrame(paint);
    },
  };
}
