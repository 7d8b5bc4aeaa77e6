"use client";
import { type ReactNode, useId, useLayoutEffect, useRef } from "react";
import { Button } from "./button";
import styles from "./controls.module.css";

export interface DialogProps {
  readonly title: string;
  readonly closeLabel: string;
  readonly onClose: () => void;
  readonly children: ReactNode;
  readonly wide?: boolean;
}

/** A modal page in the middle of the desk. Escape and the close button leave it; focus returns. */
export function Dialog({ title, closeLabel, onClose, children, wide = false }: DialogProps) {
  const ref = useRef<HTMLDialogElement>(null);
  const titleId = useId();
  // A layout effect: its end comes before the dialog leaves the page, which would lose the focus.
  useLayoutEffect(() => {
    const dialog = ref.current;
    if (dialog !== null && !dialog.open) dialog.showModal();
    return () => dialog?.close();
  }, []);
  return (
    <dialog
      ref={ref}
      className={wide ? `${styles.dialog} ${styles.wide}` : styles.dialog}
      aria-labelledby={titleId}
      onCancel={(event) => {
        event.preventDefault();
        onClose();
      }}
      onKeyDown={(event) => event.stopPropagation()}
    >
      <header className={styles.dialogHead}>
        <h2 id={titleId}>{title}</h2>
        <Button look="quiet" onClick={onClose}>
          {closeLabel}
        </Button>
      </header>
      <div className={styles.dialogBody}>{children}</div>
    </dialog>
  );
}
