"use client";
import { Button } from "../_controls";
import { useReader, useRoom } from "../_room";
import { remarks as words } from "../_words";
import styles from "./margin.module.css";

export interface UnreadProps {
  /** The sheet was asked for again here, and is read. */
  readonly onRead: () => void;
}

/** What reads the sheet could not be fetched: nothing is known of the walk, and one can ask again. */
export function Unread({ onRead }: UnreadProps) {
  const { review } = useRoom();
  const asking = useReader() === "asked-again";
  const ask = () => {
    if (!asking) review.read().then(onRead, () => undefined); // the desk tells that it failed again
  };
  return (
    <div className={styles.calm} data-unread>
      <p>{words.unread}</p>
      {/* It keeps the focus while it waits, so it is not disabled outright. */}
      <Button small aria-disabled={asking} onClick={ask}>
        {asking ? words.askingAgain : words.askAgain}
      </Button>
    </div>
  );
}
