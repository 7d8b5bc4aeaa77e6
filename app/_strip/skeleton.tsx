import { strip } from "../_words";
import styles from "./board.module.css";

const PAPERS = ["a", "b", "c", "d", "e", "f", "g", "h", "i"];

/** The strip's outline while the sheet is on its way. */
export function Skeleton() {
  return (
    <main className={styles.skeleton} aria-busy="true">
      <p role="status">{strip.opening}</p>
      <div className={styles.skeletonStrip} aria-hidden="true">
        {PAPERS.map((paper) => (
          <span key={paper} />
        ))}
      </div>
    </main>
  );
}
