"use client";
import { usePanel, useReview } from "../_room";
import { remarks as words } from "../_words";
import { useWorkspace } from "../_workspace";
import { LegNote } from "./leg-note";
import styles from "./margin.module.css";
import { ReadingRow } from "./reading-row";

/** What the panel in hand reads, by itself. */
export function ReadingsTable() {
  const panel = usePanel(useWorkspace((workspace) => workspace.panel));
  const review = useReview();
  const readings = panel === undefined ? [] : (review.readingsByPanel.get(panel.id) ?? []);
  return (
    <section className={styles.readings}>
      <h3>
        {panel === undefined ? words.readings.headingNone : words.readings.heading(panel.frame)}
      </h3>
      {panel === undefined && <p className={styles.quiet}>{words.readings.pick}</p>}
      {readings.length > 0 && (
        <table>
          <thead className="heard">
            <tr>
              <th scope="col">{words.readings.what}</th>
              <th scope="col">{words.readings.value}</th>
            </tr>
          </thead>
          <tbody>
            {readings.map((reading) => (
              <ReadingRow key={`${reading.id} ${reading.side ?? ""}`} reading={reading} />
            ))}
          </tbody>
        </table>
      )}
      {readings.length > 0 && <LegNote leg={review.legLength} />}
    </section>
  );
}
