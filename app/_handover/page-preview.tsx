"use client";
import { useRef } from "react";
import { Button } from "../_controls";
import { handover } from "../_words";
import styles from "./handover.module.css";
import type { Preview } from "./use-preview";

export interface PagePreviewProps {
  readonly preview: Preview;
  /** The page shown, counted from 1. */
  readonly number: number;
  readonly onTurn: (number: number) => void;
  /** A preview that failed is to be tried again. */
  readonly onAgain: () => void;
}

/** A page as it will be printed, and the way to the others. */
export function PagePreview({ preview, number, onTurn, onAgain }: PagePreviewProps) {
  const paper = useRef<HTMLDivElement>(null);
  const tryAgain = () => {
    paper.current?.focus(); // the button goes while it is tried
    onAgain();
  };
  const count = preview.kind === "failed" ? null : preview.count;
  return (
    <div className={styles.look}>
      <div
        ref={paper}
        tabIndex={-1}
        className={styles.preview}
        aria-busy={preview.kind === "drawing"}
      >
        {preview.kind === "drawing" && <p>{handover.drawing}</p>}
        {preview.kind === "failed" && (
          <div className={styles.failed}>
            <p role="alert">{preview.why}</p>
            <Button onClick={tryAgain}>{handover.again}</Button>
          </div>
        )}
        {preview.kind === "picture" && (
          <div ref={(place) => place?.replaceChildren(preview.picture)} />
        )}
      </div>
      {count !== null && count > 1 && (
        <nav className={styles.turn} aria-label={handover.pages}>
          <Button small disabled={number <= 1} onClick={() => onTurn(number - 1)}>
            {handover.before}
          </Button>
          <span aria-live="polite">{handover.pageOf(number, count)}</span>
          <Button small disabled={number >= count} onClick={() => onTurn(number + 1)}>
            {handover.after}
          </Button>
        </nav>
      )}
    </div>
  );
}
