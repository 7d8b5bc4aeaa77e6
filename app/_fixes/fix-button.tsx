"use client";
import { useRef } from "react";
import type { Remark } from "../../lib/gait";
import type { Sheet } from "../../lib/sheet";
import { Button } from "../_controls";
import { useMayDraw, useSheet } from "../_room";
import { fixes as words } from "../_words";
import { useWorkspace, useWorkspaceStore } from "../_workspace";
import { fixOf, remarkName } from "./fix-of";
import styles from "./fixes.module.css";

export interface FixButtonProps {
  readonly remark: Remark;
  /** The remark is pointed out: only then is its fix worked out, which costs some reviews. */
  readonly opened: boolean;
  /** Points the remark out, so that the fix is seen where it would be done. */
  readonly onOpen: () => void;
}

/** The way from a remark to its fix: pressing it shows the fix, and does nothing yet. */
export function FixButton(props: FixButtonProps) {
  const mayDraw = useMayDraw();
  if (!mayDraw) return null;
  return props.opened ? <NamedFix {...props} /> : <UnnamedFix {...props} />;
}

function UnnamedFix({ remark, onOpen }: FixButtonProps) {
  const workspace = useWorkspaceStore();
  const show = () => {
    onOpen();
    workspace.getState().showFix(remark);
  };
  return (
    <Button small aria-label={words.fixNamed(remark.title)} onClick={show}>
      {words.fix}
    </Button>
  );
}

const whole = (sheet: Sheet) => sheet;

function NamedFix({ remark, onOpen }: FixButtonProps) {
  const sheet = useSheet(whole);
  const workspace = useWorkspaceStore();
  const penDown = useWorkspace((now) => now.penDown);
  const shown = useWorkspace(
    ({ fixing }) => fixing !== null && remarkName(fixing) === remarkName(remark),
  );
  const held = useRef<ReturnType<typeof fixOf>>(null);
  if (!penDown) held.current = fixOf(sheet, remark);
  const fix = held.current;
  if (fix === null) return <p className={styles.none}>{words.none}</p>;
  const turn = () => {
    if (shown) return workspace.getState().showFix(null);
    onOpen();
    workspace.getState().showFix(remark);
  };
  return (
    <Button small className={styles.named} aria-pressed={shown} onClick={turn}>
      {fix.title}
    </Button>
  );
}
