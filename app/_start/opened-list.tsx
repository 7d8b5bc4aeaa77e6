"use client";
import Link from "next/link";
import { useEffect, useState } from "react";
import { Button } from "../_controls";
import { forgetOpened, type OpenedSheet, readOpened } from "../_room/opened-sheets";
import { start } from "../_words";
import styles from "./start.module.css";

/** What this browser has opened before. Taking a sheet off the list leaves the sheet alone. */
export function OpenedList() {
  const [opened, setOpened] = useState<readonly OpenedSheet[]>([]);
  useEffect(() => setOpened(readOpened()), []);
  const forget = (sheet: string) => {
    forgetOpened(sheet);
    setOpened(readOpened());
  };
  return (
    <section className={styles.card} aria-labelledby="opened">
      <h2 id="opened">{start.yours}</h2>
      {opened.length === 0 ? (
        <p className={styles.hint}>{start.none}</p>
      ) : (
        <ul className={styles.opened}>
          {opened.map(({ sheet, title, at }) => (
            <li key={sheet}>
              <Link href={`/sheet/${sheet}`} prefetch={false}>
                {title}
              </Link>
              <time dateTime={new Date(at).toISOString()}>{new Date(at).toLocaleDateString()}</time>
              <Button
                look="quiet"
                small
                aria-label={start.forget(title)}
                onClick={() => forget(sheet)}
              >
                {start.forgetShort}
              </Button>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
