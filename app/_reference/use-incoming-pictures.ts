"use client";
import { useEffect } from "react";
import { VIEWS } from "../../lib/geometry";
import { useMayDraw, useRoom } from "../_room";
import { reference as words } from "../_words";
import { type PictureSpot, useWorkspaceStore } from "../_workspace";
import { type Desk, layPictures, tellFailed } from "./lay-pictures";

/**
 * Takes pictures that are dropped on a paper or pasted with a panel in hand. A file that is let go
 * anywhere else is refused here: the browser would leave the board to show it.
 */
export function useIncomingPictures(): void {
  const room = useRoom();
  const workspace = useWorkspaceStore();
  const mayDraw = useMayDraw();
  useEffect(() => {
    const desk = { room, workspace };
    const { hoverPicture } = workspace.getState();
    const over = (event: DragEvent) => {
      if (!bringsFiles(event)) return;
      event.preventDefault();
      const spot = mayDraw ? spotUnder(event.target) : null;
      hoverPicture(spot);
      if (event.dataTransfer !== null) event.dataTransfer.dropEffect = spot ? "copy" : "none";
    };
    const out = (event: DragEvent) => {
      if (event.relatedTarget === null) hoverPicture(null); // it has left the window
    };
    const drop = (event: DragEvent) => {
      if (!bringsFiles(event)) return;
      event.preventDefault();
      hoverPicture(null);
      if (mayDraw) take(desk, [...(event.dataTransfer?.files ?? [])], spotUnder(event.target));
    };
    const paste = (event: ClipboardEvent) => {
      const files = [...(event.clipboardData?.files ?? [])];
      if (files.length === 0 || !mayDraw || isElsewhere(event.target)) return;
      event.preventDefault();
      const { panel, view } = workspace.getState();
      if (panel === null) tellFailed(desk, { why: words.why.noPanel });
      else void layPictures(desk, files, { panel, view });
    };
    window.addEventListener("dragover", over);
    window.addEventListener("dragleave", out);
    window.addEventListener("drop", drop);
    window.addEventListener("paste", paste);
    return () => {
      window.removeEventListener("dragover", over);
      window.removeEventListener("dragleave", out);
      window.removeEventListener("drop", drop);
      window.removeEventListener("paste", paste);
    };
  }, [room, workspace, mayDraw]);
}

function take(desk: Desk, files: readonly File[], spot: PictureSpot | null): void {
  if (files.length === 0) tellFailed(desk, { why: words.why.noFile });
  else if (spot === null) tellFailed(desk, { why: words.why.noPaper });
  else {
    desk.workspace.getState().pickPanel(spot.panel, spot.view);
    void layPictures(desk, files, spot);
  }
}

function bringsFiles({ dataTransfer }: DragEvent): boolean {
  return dataTransfer?.types.includes("Files") ?? false;
}

/** The paper under the pointer. */
function spotUnder(target: EventTarget | null): PictureSpot | null {
  if (!(target instanceof Element)) return null;
  const paper = target.closest<HTMLElement>("figure[data-panel][data-view]");
  const view = VIEWS.find((one) => one === paper?.dataset.view);
  const panel = paper?.dataset.panel;
  return panel === undefined || view === undefined ? null : { panel, view };
}

/** In a field, or on a page that lies over the board. */
function isElsewhere(target: EventTarget | null): boolean {
  if (document.querySelector("dialog[open]") !== null) return true;
  return target instanceof Element && target.closest("input, textarea, select") !== null;
}
