"use client";
import { type KeyboardEvent, useEffect, useLayoutEffect, useRef } from "react";
import { Button } from "../_controls";
import { useMayDraw, useRoom, useSheet } from "../_room";
import { fixes as words } from "../_words";
import { useWorkspace, useWorkspaceStore } from "../_workspace";
import { doFix } from "./do-fix";
import styles from "./fixes.module.css";
import type { ShownFix } from "./shown-fix";
import { tellFix } from "./tell-fix";
import { useShownFix } from "./use-shown-fix";

/** The fix that is looked at, in words, and the two ways out of it. */
export function FixBar() {
  const shown = useShownFix();
  const mayDraw = useMayDraw();
  const fixing = useWorkspace((workspace) => workspace.fixing);
  const penDown = useWorkspace((workspace) => workspace.penDown);
  const showFix = useWorkspace((workspace) => workspace.showFix);
  const lost = fixing !== null && !penDown && (shown === null || !mayDraw);
  useEffect(() => {
    if (lost) showFix(null); // others settled it, or nothing settles it any more
  }, [lost, showFix]);
  return shown === null || !mayDraw ? null : <OpenBar shown={shown} />;
}

function OpenBar({ shown }: { readonly shown: ShownFix }) {
  const room = useRoom();
  const workspace = useWorkspaceStore();
  const panels = useSheet((sheet) => sheet.panels);
  const bar = useRef<HTMLElement>(null);
  useBorrowedFocus(bar);
  const press = (event: KeyboardEvent) => {
    const onButton = event.target instanceof HTMLButtonElement;
    if (event.key === "Enter" && !onButton) doFix(room, workspace);
    else if (event.key === "Escape") workspace.getState().showFix(null);
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  return (
    <section ref={bar} className={styles.bar} aria-label={words.shown} onKeyDown={press}>
      <p className={styles.says} role="status">
        <b>{shown.fix.title}.</b> {tellFix(shown.fix, panels)}
      </p>
      <span className={styles.pair}>
        <Button small look="main" data-first onClick={() => doFix(room, workspace)}>
          {words.doIt}
        </Button>
        <Button small onClick={() => workspace.getState().showFix(null)}>
          {words.leaveIt}
        </Button>
      </span>
    </section>
  );
}

/** The bar takes the focus, and gives it back to where it was, or to the panel in hand, or to the margin. */
function useBorrowedFocus(bar: { readonly current: HTMLElement | null }): void {
  const workspace = useWorkspaceStore();
  useLayoutEffect(() => {
    const lender = document.activeElement;
    const own = bar.current;
    own?.querySelector<HTMLElement>("[data-first]")?.focus();
    return () => {
      if (own?.contains(document.activeElement) !== true) return;
      // What lent the focus may go with the remark that is settled: that is known a frame later.
      const giveBack = () => {
        const { panel } = workspace.getState();
        // The button that showed the fix gave way to one that names it: then nothing had the focus.
        const had = lender instanceof HTMLElement && lender !== document.body;
        const there = had && lender.isConnected;
        const find = (rest: string) => document.querySelector<HTMLElement>(rest);
        const column = find(`[data-column="${panel}"] header button`);
        (there ? lender : (column ?? find("[data-margin-heading]")))?.focus();
      };
      giveBack();
      requestAnimationFrame(() => {
        if (document.activeElement === document.body) giveBack();
      });
    };
  }, [bar, workspace]);
}
