import type { Review } from "../../lib/gait";
import { remarks as words } from "../_words";
import styles from "./margin.module.css";

/** How long a leg is on this paper, and where that was measured: what every distance rests on. */
export function LegNote({ leg }: { readonly leg: Review["legLength"] }) {
  if (leg.kind === "cannot-tell") return null;
  return (
    <p className={styles.quiet}>
      {words.readings.legNote(leg.value.toFixed(0))} {words.readings.legFrom[leg.from]}
    </p>
  );
}
