"use client";
import { useReader, useReview } from "../_room";
import { charts } from "../_words";
import styles from "./charts.module.css";

/** What a chart without anything on it says: what it waits for, once the sheet was read. */
export function CalmLine({ empty }: { readonly empty: string }) {
  const review = useReview();
  const unfetched = useReader() === "unfetched";
  const unread = unfetched ? charts.unread : charts.reading;
  return (
    <p className={styles.calm}>
      <span>{review === null ? unread : empty}</span>
    </p>
  );
}
