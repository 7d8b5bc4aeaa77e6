import type { PanelReading } from "../../lib/gait";
import { remarks as words } from "../_words";
import styles from "./readings.module.css";
import { tellPanelReading } from "./tell-reading";

/** One reading: its name, and its value or, calmly, what it still needs. */
export function ReadingRow({ reading }: { readonly reading: PanelReading }) {
  const { id, side, answer } = reading;
  const name = words.readings.name[id];
  const value = tellPanelReading(reading);
  return (
    <tr>
      <th scope="row">{side === null ? name : words.readings.sided(side, name)}</th>
      <td>
        {value !== null && <b>{value}</b>}
        {answer.kind === "cannot-tell" && (
          <span className={styles.needed}>{words.readings.needs(answer.needs)}</span>
        )}
      </td>
    </tr>
  );
}
