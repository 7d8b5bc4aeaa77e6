"use client";
import { useCallback } from "react";
import { flushSync } from "react-dom";
import { type JointName, markOf } from "../../lib/body";
import type { View } from "../../lib/geometry";
import { liftMark, type Panel, placeMark } from "../../lib/sheet";
import { Button } from "../_controls";
import { usePanel, useRoom } from "../_room";
import { marks as words } from "../_words";
import { useWorkspace } from "../_workspace";
import { focusMark } from "./focus-mark";
import { JointGrid } from "./joint-grid";
import { sideOfJoint } from "./joint-side";
import { SideSign } from "./joint-sign";
import styles from "./picker.module.css";
import { nextJoint, quickSetDone } from "./proposals";
import { proposeMark } from "./propose-mark";

/** The joints of the paper in hand: which are marked, which is next, and a way to choose. */
export function JointPicker() {
  const id = useWorkspace((workspace) => workspace.panel);
  const view = useWorkspace((workspace) => workspace.view);
  const panel = usePanel(id);
  return (
    <section className={styles.picker} aria-labelledby="joints-of-view">
      <h2 id="joints-of-view">{words.heading(view)}</h2>
      {panel === undefined ? (
        <p className={styles.quiet}>{words.noPanel}</p>
      ) : (
        <JointsOf panel={panel} view={view} />
      )}
    </section>
  );
}

function JointsOf({ panel, view }: { readonly panel: Panel; readonly view: View }) {
  const taken = useWorkspace((workspace) => workspace.joint);
  const takeJoint = useWorkspace((workspace) => workspace.takeJoint);
  const marks = panel.marks[view];
  const proposed = nextJoint(marks, view);
  const joint = taken ?? proposed;
  const pick = useCallback(
    (picked: JointName) => takeJoint(picked === taken ? null : picked),
    [taken, takeJoint],
  );
  return (
    <>
      <p className={styles.told} role="status">
        {taken === null && quickSetDone(marks, view) && (
          <span>{proposed === null ? words.allDone : words.quickDone} </span>
        )}
        {joint !== null && (
          <strong>
            <SideSign side={sideOfJoint(joint)} />{" "}
            {taken === null ? words.next(joint) : words.inHand(joint)}
          </strong>
        )}
      </p>
      {joint !== null && <Deeds panel={panel} view={view} joint={joint} />}
      <JointGrid view={view} marks={marks} taken={taken} next={joint} onPick={pick} />
      <p className={styles.quiet}>{words.keys}</p>
    </>
  );
}

interface DeedsProps {
  readonly panel: Panel;
  readonly view: View;
  readonly joint: JointName;
}

/** What a hand without a pointer, and one without a keyboard, does with the joint in hand. */
function Deeds({ panel, view, joint }: DeedsProps) {
  const room = useRoom();
  const takeJoint = useWorkspace((workspace) => workspace.takeJoint);
  const placed = markOf(panel.marks[view], joint) !== null;
  const place = () => {
    const { panels } = room.sheet.getSnapshot();
    // Rendered at once: the focus goes to a mark that has to be there.
    flushSync(() => {
      placeMark(room.drawing, panel.id, view, joint, proposeMark(panels, panel, view, joint));
      takeJoint(null);
    });
    focusMark(panel.id, view, joint);
  };
  const lift = () => {
    liftMark(room.drawing, panel.id, view, joint);
    takeJoint(joint); // it stays in hand, to be put where it belongs
  };
  return (
    <div className={styles.deeds}>
      {/* One button in two moods, so that lifting does not take the focus away with it. */}
      <Button small onClick={placed ? lift : place}>
        {placed ? words.lift(joint) : words.place(joint)}
      </Button>
      {placed && (
        <Button small onClick={() => focusMark(panel.id, view, joint)}>
          {words.find(joint)}
        </Button>
      )}
    </div>
  );
}
