import { type CheckId, type MethodLimit, YARDSTICKS, type Yardstick } from "../../lib/gait";
import { remarks, methods as words } from "../_words";
import { LevelMark } from "./level-mark";
import styles from "./limits.module.css";
import { tellLimit, tellTrips } from "./tell-limit";
import { unbroken } from "./unbroken";

export interface LimitsTableProps {
  readonly check: CheckId;
  readonly limits: readonly MethodLimit[];
}

/** The limits of one check, and under them where each comes from. */
export function LimitsTable({ check, limits }: LimitsTableProps) {
  const { table } = words;
  const sources = [...new Set(limits.map(({ source }) => source))];
  return (
    <>
      <table className={styles.limits}>
        <caption className="heard">{table.caption(remarks.check[check])}</caption>
        <thead>
          <tr>
            <th scope="col">{table.what}</th>
            <th scope="col">{table.by}</th>
            <th scope="col">{table.remarked}</th>
            <th scope="col">{table.trips}</th>
            <th scope="col">{table.source}</th>
          </tr>
        </thead>
        <tbody>
          {limits.map((limit) => (
            <tr key={`${limit.of} ${limit.level} ${limit.yardsticks.join()} ${limit.fires}`}>
              <th scope="row">{limit.of}</th>
              <td data-head={table.by}>{yardsticksOf(limit.yardsticks)}</td>
              <td>
                <span className={styles.bound}>{unbroken(tellLimit(limit))}</span>
                <LevelMark level={limit.level} />
              </td>
              <td data-head={table.trips}>{tellTrips(limit.tripRate)}</td>
              <td data-head={table.source}>{sources.indexOf(limit.source) + 1}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <ol className={styles.sources} aria-label={words.section.sources}>
        {sources.map((source) => (
          <li key={source}>{unbroken(source)}.</li>
        ))}
      </ol>
    </>
  );
}

function yardsticksOf(yardsticks: readonly Yardstick[]): string {
  if (yardsticks.length === YARDSTICKS.length) return words.table.everyYardstick;
  return yardsticks.map((name) => remarks.yardstick.name[name]).join(", ");
}
