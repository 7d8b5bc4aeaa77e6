"use client";
import type { PanelReading, PanelReadingId } from "../../lib/gait";
import { usePanel, useReview } from "../_room";
import { remarks as words } from "../_words";
import { useWorkspace } from "../_workspace";
import { LegNote } from "./leg-note";
import margin from "./margin.module.css";
import { ReadingRow } from "./reading-row";
import styles from "./readings.module.css";
import { readingsAround, type StepRow, stepRows, strideRows } from "./step-rows";

/** What is looked at first; the rest of a pose is folded. */
const FIRST: ReadonlySet<PanelReadingId> = new Set([
  "hip-height",
  "knee-bend",
  "foot-pitch",
  "weight-foot-flat",
]);

/** What the panel in hand reads, its step and its walk. What is not told yet is folded away. */
export function ReadingsTable() {
  const panel = usePanel(useWorkspace((workspace) => workspace.panel));
  const review = useReview();
  const readings = panel === undefined ? [] : (review?.readingsByPanel.get(panel.id) ?? []);
  const told = readings.filter(({ answer }) => answer.kind !== "cannot-tell");
  const untold = readings.filter(({ answer }) => answer.kind === "cannot-tell");
  const first = told.filter(({ id }) => FIRST.has(id));
  const isLength = ({ id }: PanelReading) => id.endsWith("-length") && id !== "base-length";
  const more = told.filter((reading) => !FIRST.has(reading.id) && !isLength(reading));
  const lengths = told.filter(isLength);
  const { step, stride } = readingsAround(review, panel?.id ?? "");
  return (
    <section className={styles.readings}>
      <h3>
        {panel === undefined ? words.readings.headingNone : words.readings.heading(panel.frame)}
      </h3>
      {panel === undefined && <p className={margin.quiet}>{words.readings.pick}</p>}
      {panel !== undefined && review === null && (
        <p className={margin.quiet}>{words.readings.unread}</p>
      )}
      {first.length > 0 && <Rows readings={first} />}
      {more.length > 0 && (
        <details className={margin.fold}>
          <summary>{words.readings.more}</summary>
          <Rows readings={more} />
        </details>
      )}
      {lengths.length > 0 && (
        <details className={margin.fold}>
          <summary>{words.readings.lengths}</summary>
          <Rows readings={lengths} />
        </details>
      )}
      {step !== null && (
        <PlainFold title={words.readings.step(step.weightOn)} rows={stepRows(step)} />
      )}
      {stride !== null && <PlainFold title={words.readings.walk} rows={strideRows(stride)} />}
      {untold.length > 0 && (
        <details className={margin.fold}>
          <summary>{words.readings.untold(untold.length)}</summary>
          <Rows readings={untold} />
        </details>
      )}
      {review !== null && told.length > 0 && <LegNote leg={review.legLength} />}
    </section>
  );
}

function Rows({ readings }: { readonly readings: readonly PanelReading[] }) {
  return (
    <table>
      <Heads />
      <tbody>
        {readings.map((reading) => (
          <ReadingRow key={`${reading.id} ${reading.side ?? ""}`} reading={reading} />
        ))}
      </tbody>
    </table>
  );
}

function PlainFold({ title, rows }: { readonly title: string; readonly rows: readonly StepRow[] }) {
  if (rows.length === 0) return null;
  return (
    <details className={margin.fold}>
      <summary>{title}</summary>
      <table>
        <Heads />
        <tbody>
          {rows.map(({ name, value }) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td>
                <b>{value}</b>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}

function Heads() {
  return (
    <thead className="heard">
      <tr>
        <th scope="col">{words.readings.what}</th>
        <th scope="col">{words.readings.value}</th>
      </tr>
    </thead>
  );
}
