"use client";
import { type MouseEvent, useCallback, useMemo, useRef } from "react";
import { JOINTS, type JointName, markOf } from "../../lib/body";
import { useSheet } from "../_room";
import { marks as words } from "../_words";
import { type LayerProps, useWorkspace, useWorkspaceStore } from "../_workspace";
import { ROOM_FOR_NAMES, reachOf } from "./grip";
import { MarkDrawing } from "./mark-drawing";
import { MarkHandle } from "./mark-handle";
import styles from "./marks.module.css";
import { PinnedFeet } from "./pinned-feet";
import { promptedJoint } from "./prompt";
import { PromptOnPaper } from "./prompt-on-paper";
import { standFootOf, withFollowing } from "./stand-foot";
import { useMarkHand } from "./use-mark-hand";
import { useMarkKeys } from "./use-mark-keys";

/**
 * A tap that places a joint over another's mark leaves the focus on the paper: Enter is for the guess. What
 * is dragged or taken gets it once the pointer lifts.
 */
function keepFocus(event: MouseEvent<HTMLElement>): void {
  event.preventDefault();
  event.currentTarget.focus({ preventScroll: true });
}

/** The marks of one paper while the mark tool is in hand: placed, moved and lifted here. */
export function MarkBench({ panel, view, width }: Omit<LayerProps, "mayDraw">) {
  const workspace = useWorkspaceStore();
  const bench = useRef<HTMLFieldSetElement>(null);
  const { hand, held } = useMarkHand(bench, { panel, view, width });
  const inHand = useWorkspace((now) => now.panel === panel.id && now.view === view);
  const taken = useWorkspace((now) => now.joint);
  const pulls = useWorkspace((now) => now.panel === panel.id && now.dragging === "figure");
  const foot = useSheet(standFootOf);
  const own = useMemo(() => {
    const stored = panel.marks[view];
    return held === null ? stored : { ...stored, [held.joint]: held.mark };
  }, [panel, view, held]);
  const marks = useMemo(() => withFollowing(own, view, foot), [own, view, foot]);
  const asked = inHand && held === null ? promptedJoint(own, view, taken) : null;

  const take = useCallback(
    (joint: JointName) => {
      const { joint: now, takeJoint } = workspace.getState();
      takeJoint(now === joint ? null : joint);
    },
    [workspace],
  );
  const keys = useMarkKeys(bench, hand, { panel: panel.id, view });
  const shown = JOINTS.flatMap((joint) => {
    const mark = markOf(own, joint);
    return mark === null ? [] : [{ joint, mark }];
  });
  const handles = inHand || width >= ROOM_FOR_NAMES ? shown : [];
  return (
    <fieldset
      ref={bench}
      className={`${styles.layer} ${styles.atWork}`}
      aria-label={words.layer(view)}
      tabIndex={-1}
      onMouseDown={keepFocus}
      {...keys}
    >
      {pulls && <PinnedFeet panel={panel} view={view} width={width} />}
      <MarkDrawing marks={marks} own={own} width={width} />
      {asked !== null && (
        <PromptOnPaper key={asked} panel={panel} view={view} width={width} joint={asked} />
      )}
      {handles.map(({ joint, mark }) => (
        <MarkHandle
          key={joint}
          joint={joint}
          view={view}
          x={mark.x}
          y={mark.y}
          size={2 * reachOf(width)}
          named={width >= ROOM_FOR_NAMES}
          taken={inHand && taken === joint}
          inOrder={inHand}
          onTake={take}
        />
      ))}
    </fieldset>
  );
}
