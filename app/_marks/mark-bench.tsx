"use client";
import { type FocusEvent, type KeyboardEvent, useCallback, useRef } from "react";
import { JOINTS, type JointName, markOf } from "../../lib/body";
import { liftMark } from "../../lib/sheet";
import { useRoom } from "../_room";
import { marks as words } from "../_words";
import { type LayerProps, useWorkspace, useWorkspaceStore } from "../_workspace";
import { ROOM_FOR_NAMES, reachOf } from "./grip";
import { MarkDrawing } from "./mark-drawing";
import { MarkHandle } from "./mark-handle";
import { nudgeOf } from "./mark-keys";
import styles from "./marks.module.css";
import { useMarkHand } from "./use-mark-hand";

/** The marks of one paper while the mark tool is in hand: placed, moved and lifted here. */
export function MarkBench({ panel, view, width }: Omit<LayerProps, "mayDraw">) {
  const room = useRoom();
  const workspace = useWorkspaceStore();
  const bench = useRef<HTMLFieldSetElement>(null);
  const { hand, held } = useMarkHand(bench, { panel, view, width });
  const inHand = useWorkspace((now) => now.panel === panel.id && now.view === view);
  const taken = useWorkspace((now) => now.joint);
  const stored = panel.marks[view];
  const marks = held === null ? stored : { ...stored, [held.joint]: held.mark };

  const take = useCallback(
    (joint: JointName) => {
      const { joint: now, takeJoint } = workspace.getState();
      takeJoint(now === joint ? null : joint);
    },
    [workspace],
  );
  const press = (event: KeyboardEvent<HTMLElement>) => {
    const handle = handleOf(event.target);
    const joint = jointOf(handle);
    const nudge = joint === null ? null : nudgeOf(event);
    if (event.key === "Escape" && hand.busy) hand.cancel();
    else if (event.key === "Escape" && handle !== null) bench.current?.focus();
    else if (joint !== null && nudge !== null) hand.nudge(joint, nudge);
    else if (event.key === "Delete" || event.key === "Backspace") {
      // Never the board's Delete from here: that one removes the whole panel.
      if (joint !== null && handle !== null && !hand.busy) {
        focusBeside(handle, bench.current);
        liftMark(room.drawing, panel.id, view, joint);
      }
    } else {
      if (hand.busy) event.stopPropagation(); // the board rests until the mark is down
      return;
    }
    event.preventDefault();
    event.stopPropagation();
  };
  const release = (event: KeyboardEvent | FocusEvent) => {
    if (!("key" in event) || nudgeOf({ ...modifiersUp, key: event.key }) !== null) hand.settle();
  };
  const shown = JOINTS.flatMap((joint) => {
    const mark = markOf(marks, joint);
    return mark === null ? [] : [{ joint, mark }];
  });
  const handles = inHand || width >= ROOM_FOR_NAMES ? shown : [];
  return (
    <fieldset
      ref={bench}
      className={`${styles.layer} ${styles.atWork}`}
      aria-label={words.layer(view)}
      tabIndex={-1}
      onKeyDown={press}
      onKeyUp={release}
      onBlur={release}
    >
      <MarkDrawing marks={marks} width={width} />
      {handles.map(({ joint, mark }) => (
        <MarkHandle
          key={joint}
          joint={joint}
          view={view}
          x={mark.x}
          y={mark.y}
          size={2 * reachOf(width)}
          named={width >= ROOM_FOR_NAMES}
          held={held?.joint === joint}
          taken={inHand && taken === joint}
          inOrder={inHand}
          onTake={take}
        />
      ))}
    </fieldset>
  );
}

const modifiersUp = { shiftKey: false, altKey: false, ctrlKey: false, metaKey: false };

function handleOf(target: EventTarget): HTMLElement | null {
  return target instanceof HTMLElement ? target.closest<HTMLElement>("[data-joint]") : null;
}

function jointOf(handle: HTMLElement | null): JointName | null {
  return JOINTS.find((joint) => joint === handle?.dataset.joint) ?? null;
}

/** Before a mark is lifted, focus goes to the next one, so that it is not lost with the mark. */
function focusBeside(handle: HTMLElement, bench: HTMLElement | null): void {
  const beside = [handle.nextElementSibling, handle.previousElementSibling].find(
    (element) => element instanceof HTMLElement,
  );
  (beside instanceof HTMLElement ? beside : bench)?.focus();
}
