"use client";
import { type KeyboardEvent, useEffect, useMemo, useRef } from "react";
import { PANEL } from "../../lib/body";
import { useRoom } from "../_room";
import { gather as words } from "../_words";
import { type LayerProps, useWorkspace, useWorkspaceStore } from "../_workspace";
import styles from "./gather.module.css";
import { gatheredStrokes } from "./gather-deeds";
import { GatherDrawing } from "./gather-drawing";
import { pressGathered } from "./gather-keys";
import { useGatherHand } from "./use-gather-hand";
import { wayOf } from "./way-of";

const NOBODY: ReadonlySet<string> = new Set();

/** One paper while the gather tool is in hand. */
export function GatherBench({ panel, view, width }: Omit<LayerProps, "mayDraw">) {
  const room = useRoom();
  const workspace = useWorkspaceStore();
  const bench = useRef<HTMLFieldSetElement>(null);
  const held = useRef<SVGGElement>(null);
  const outline = useRef<SVGPathElement>(null);
  const gathered = useWorkspace(({ gathered: now }) =>
    now?.panel === panel.id && now.view === view ? now : null,
  );
  const over = useWorkspace(
    ({ gatherOver }) => gatherOver?.panel === panel.id && gatherOver.view === view,
  );
  const ink = panel.ink[view];
  const strokes = useMemo(() => {
    const ids = gathered === null ? NOBODY : new Set(gathered.ids);
    return ids.size === 0 ? [] : ink.filter(({ id }) => ids.has(id));
  }, [ink, gathered]);
  useGatherHand({ bench, held, outline, paper: { panel: panel.id, view }, ink, strokes, width });

  // What was gathered here last, wherever the hand did it, is what keys are meant for.
  useEffect(() => {
    if (gathered !== null) bench.current?.focus({ preventScroll: true });
  }, [gathered]);

  const press = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey || event.altKey || strokes.length === 0) return;
    if (!pressGathered(room, workspace, event, PANEL.width / width)) return;
    event.preventDefault();
    event.stopPropagation();
  };
  return (
    <fieldset
      ref={bench}
      className={styles.bench}
      aria-label={words.bench(view, strokes.length)}
      tabIndex={strokes.length > 0 ? 0 : -1}
      data-over={over}
      onKeyDown={press}
    >
      <GatherDrawing strokes={strokes} width={width} held={held} outline={outline} />
      {over && <HeldOver />}
    </fieldset>
  );
}

/** What is held over this paper from another; the hand that holds it moves it on screen. */
function HeldOver() {
  const room = useRoom();
  const workspace = useWorkspaceStore();
  const strokes = gatheredStrokes(room, workspace.getState().gathered);
  return (
    <svg
      className={styles.drawing}
      viewBox={`0 0 ${PANEL.width} ${PANEL.height}`}
      aria-hidden="true"
      focusable="false"
    >
      <g data-held-over>
        {strokes.map(({ id, points }) => (
          <path key={id} className={styles.line} d={wayOf(points)} />
        ))}
      </g>
    </svg>
  );
}
