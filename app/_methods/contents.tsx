import type { Method } from "../../lib/gait";
import { remarks, methods as words } from "../_words";
import { capital } from "./capital";
import styles from "./contents.module.css";

export interface ContentsProps {
  readonly methods: readonly Method[];
}

/** What stands on the page, as links. */
export function Contents({ methods }: ContentsProps) {
  return (
    <nav className={styles.contents} aria-labelledby="contents">
      <h2 id="contents">{words.contents}</h2>
      <ul>
        {ABOUT.map((part) => (
          <li key={part}>
            <a href={`#about-${part}`}>{words.about[part].heading}</a>
          </li>
        ))}
      </ul>
      <h3>{words.checks}</h3>
      <ul>
        {methods.map(({ check }) => (
          <li key={check}>
            <a href={`#${check}`}>{capital(remarks.check[check])}</a>
          </li>
        ))}
      </ul>
    </nav>
  );
}

/** The parts that stand before the checks, in their order. */
export const ABOUT = ["what", "sure", "sizes", "yardsticks", "levels", "from"] as const;
