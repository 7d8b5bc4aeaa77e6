"use client";
import type { PanelReading } from "../../lib/gait";
import { usePanel, useReview } from "../_room";
import { remarks as words } from "../_words";
import { useWorkspace } from "../_workspace";
import { LegNote } from "./leg-note";
import styles from "./margin.module.css";
import { ReadingRow } from "./reading-row";

/** What the panel in hand reads, by itself. What it does not tell yet is folded away. */
export function ReadingsTable() {
  const panel = usePanel(useWorkspace((workspace) => workspace.panel));
  const review = useReview();
  const readings = panel === undefined ? [] : (review.readingsByPanel.get(panel.id) ?? []);
  const told = readings.filter(({ answer }) => answer.kind !== "cannot-tell");
  const untold = readings.filter(({ answer }) => answer.kind === "cannot-tell");
  return (
    <section className={styles.readings}>
      <h3>
        {panel === undefined ? words.readings.headingNone : words.readings.heading(panel.frame)}
      </h3>
      {panel === undefined && <p className={styles.quiet}>{words.readings.pick}</p>}
      {told.length > 0 && <Rows readings={told} />}
      {untold.length > 0 && (
        <details className={styles.fold}>
          <summary>{words.readings.untold(untold.length)}</summary>
          <Rows readings={untold} />
        </details>
      )}
      {told.length > 0 && <LegNote leg={review.legLength} />}
    </section>
  );
}

function Rows({ readings }: { readonly readings: readonly PanelReading[] }) {
  return (
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
  );
}
