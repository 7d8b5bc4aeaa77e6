import type { ReactNode } from "react";
import { door } from "../_words";
import styles from "./door.module.css";

export interface NoticeProps {
  readonly title: string;
  readonly body?: string;
  readonly busy?: boolean;
  /** What is to be said besides. */
  readonly more?: ReactNode;
  readonly children?: ReactNode;
}

/** A sheet of paper on the empty desk with a few words on it. */
export function Notice({ title, body, busy = false, more, children }: NoticeProps) {
  return (
    <main className={styles.desk} aria-busy={busy}>
      <div className={styles.paper} role={busy ? "status" : undefined}>
        <h1>{title}</h1>
        {body !== undefined && <p>{body}</p>}
        {more}
        {!busy && (
          <p className={styles.ways}>
            {children}
            {/* A full load on purpose: whatever went wrong here does not come along. */}
            <a href="/">{door.home}</a>
          </p>
        )}
        {busy && <span className={styles.skeleton} aria-hidden="true" />}
      </div>
    </main>
  );
}
