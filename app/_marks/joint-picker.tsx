"use client";
import { type ReactNode, useCallback, useEffect } from "react";
import type { JointName } from "../../lib/body";
import type { View } from "../../lib/geometry";
import type { Panel } from "../../lib/sheet";
import { usePanel, useRoom, useSheet } from "../_room";
import { marks as words } from "../_words";
import { useWorkspace, useWorkspaceStore } from "../_workspace";
import { goBack } from "./go-on";
import { JointGrid } from "./joint-grid";
import { sideOfJoint } from "./joint-side";
import { SideSign } from "./joint-sign";
import { MarkingWays } from "./marking-ways";
import styles from "./picker.module.css";
import { leftOfQuickSet } from "./prompt";
import { PromptDeeds } from "./prompt-deeds";
import { nextJoint, quickSet, quickSetDone } from "./proposals";

export interface JointPickerProps {
  /** What else marks a panel, to stand beside what is asked for. */
  readonly children?: ReactNode;
}

/** The joints of the paper in hand: which are marked, which is next, and a way to choose. */
export function JointPicker({ children }: JointPickerProps) {
  const id = useWorkspace((workspace) => workspace.panel);
  const view = useWorkspace((workspace) => workspace.view);
  const panel = usePanel(id);
  useWayBack();
  return (
    <section className={styles.picker} aria-labelledby="joints-of-view">
      <h2 id="joints-of-view">{words.heading(view)}</h2>
      {panel === undefined ? (
        <p className={styles.quiet}>{words.noPanel}</p>
      ) : (
        <JointsOf panel={panel} view={view} beside={children} />
      )}
    </section>
  );
}

/** Undo takes the prompt back along the way it came. */
function useWayBack(): void {
  const room = useRoom();
  const workspace = useWorkspaceStore();
  useEffect(() => room.undo.subscribe(() => goBack(room, workspace)), [room, workspace]);
}

interface Seen {
  readonly panel: Panel;
  readonly view: View;
}

function JointsOf({ panel, view, beside }: Seen & { readonly beside: ReactNode }) {
  const taken = useWorkspace((workspace) => workspace.joint);
  const takeJoint = useWorkspace((workspace) => workspace.takeJoint);
  const marks = panel.marks[view];
  const joint = taken ?? nextJoint(marks, view);
  const pick = useCallback(
    (picked: JointName) => takeJoint(picked === taken ? null : picked),
    [taken, takeJoint],
  );
  return (
    <>
      <p className={styles.told} role="status">
        {taken === null && <HowFar panel={panel} view={view} />}
        {joint !== null && (
          <strong>
            <SideSign side={sideOfJoint(joint)} />{" "}
            {taken === null ? words.next(joint) : words.inHand(joint)}
          </strong>
        )}
      </p>
      <div className={styles.deeds}>
        {joint !== null && <PromptDeeds panel={panel} view={view} joint={joint} />}
        {beside}
      </div>
      <MarkingWays />
      <JointGrid view={view} marks={marks} taken={taken} next={joint} onPick={pick} />
      <p className={styles.quiet}>{words.keys}</p>
    </>
  );
}

/** Whether this view is done, or the whole strip's; or that the prompt has just come to it. */
function HowFar({ panel, view }: Seen) {
  const cameHere = useWorkspace(({ movedOn }) => movedOn.at(-1)?.to);
  const left = useSheet(({ panels }) =>
    panels.reduce((sum, one) => sum + Number(!quickSetDone(one.marks[view], view)), 0),
  );
  const marks = panel.marks[view];
  if (left === 0) return <span>{words.stripDone(view)} </span>;
  if (nextJoint(marks, view) === null) return <span>{words.allDone} </span>;
  if (quickSetDone(marks, view)) return <span>{words.quickDone} </span>;
  const untouched = leftOfQuickSet(marks, view).length === quickSet(view).length;
  const came = cameHere?.panel === panel.id && cameHere.view === view;
  return untouched && came ? <span>{words.onTo(panel.frame, view)} </span> : null;
}
