"use client";
import { useState } from "react";
import { flushSync } from "react-dom";
import type { JointName } from "../../lib/body";
import type { Point } from "../../lib/geometry";
import { useRoom, useSheet } from "../_room";
import { marks as words } from "../_words";
import { type LayerProps, useWorkspaceStore } from "../_workspace";
import { acceptGuess } from "./accept-guess";
import { focusGuess } from "./focus-mark";
import { reachOf } from "./grip";
import { guessedMark, guessedQuickSet } from "./guess";
import { GuessDrawing } from "./guess-drawing";
import { GuessHandle } from "./guess-handle";
import { sideOfJoint } from "./joint-side";
import { SideSign } from "./joint-sign";
import styles from "./marks.module.css";
import { onPaper } from "./on-paper";

export interface PromptOnPaperProps extends Omit<LayerProps, "mayDraw"> {
  readonly joint: JointName;
}

/** What is asked for next, on the paper itself: its name at the top, its guess where it would go. */
export function PromptOnPaper({ panel, view, width, joint }: PromptOnPaperProps) {
  const room = useRoom();
  const workspace = useWorkspaceStore();
  const [brought, setBrought] = useState<Point | null>(null);
  const sheet = useSheet(whole);
  const guess = guessedMark(sheet, panel, view, joint);
  const at = brought ?? guess;
  const guesses = { ...guessedQuickSet(sheet, panel, view), [joint]: { ...guess, ...at } };
  const accept = () => {
    // Rendered at once: the focus goes on to a guess that has to be there.
    flushSync(() => acceptGuess(room, workspace, brought));
    const { panel: next, view: seen } = workspace.getState();
    if (next !== null) focusGuess(next, seen);
  };
  return (
    <>
      <span className={styles.asked} data-side={sideOfJoint(joint)} aria-hidden="true">
        <SideSign side={sideOfJoint(joint)} /> {words.joint(joint)}
      </span>
      <GuessDrawing guesses={guesses} prompted={joint} width={width} />
      <GuessHandle
        joint={joint}
        view={view}
        at={at}
        size={2 * reachOf(width)}
        onBring={(by) => setBrought(onPaper({ x: at.x + by.x, y: at.y + by.y }))}
        onAccept={accept}
      />
    </>
  );
}

const whole = <T,>(sheet: T): T => sheet;
