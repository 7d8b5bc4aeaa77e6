"use client";
import { type ComponentType, type ReactNode, useId, useRef } from "react";
import type { Review, ToldTogether } from "../../lib/gait";
import type { Sheet } from "../../lib/sheet";
import { useReader, useReview, useSheet, useSkipped } from "../_room";
import { remarks as words } from "../_words";
import { CalmWords } from "./calm-words";
import { foldUnder } from "./fold-under";
import { splitTidy } from "./group-remarks";
import styles from "./margin.module.css";
import { marginMood } from "./margin-mood";
import { marginSummary } from "./margin-summary";
import { ReadingsTable } from "./readings-table";
import type { RemarkActsProps } from "./remark-acts";
import { RemarkList } from "./remark-list";
import { TidyList } from "./tidy-list";
import { Unread } from "./unread";
import { UntoldList } from "./untold-list";
import { useKeptFocus } from "./use-kept-focus";
import { YardstickPicker } from "./yardstick-picker";

export interface MarginProps {
  readonly onHelp: () => void;
  /** What can be done about a remark, beside showing where it is. */
  readonly Acts: ComponentType<RemarkActsProps>;
  /** Which remarks are of one cause, as far as that was found. */
  readonly together: readonly ToldTogether[];
  /** What stands between the remarks and the questions that are still open. */
  readonly children?: ReactNode;
}

/** The right column: what will show, what cannot be told, and the readings of the panel in hand. */
export function Margin({ onHelp, Acts, together, children }: MarginProps) {
  const review = useReview();
  const unread = useIsUnread() ? "unread" : "reading";
  const toRedraw = useSheet(countToRedraw);
  const mood = marginMood(useSheet(emptiness), review ?? unread, toRedraw);
  const skipped = useSkipped();
  const headingId = useId();
  const area = useRef<HTMLElement>(null);
  const heading = useRef<HTMLHeadingElement>(null);
  useKeptFocus(area, heading);
  const { remarks, kept, quieted, cannotTell, yardstick } = review ?? NOTHING;
  const { seen, tidy } = splitTidy(foldUnder(remarks, together));
  return (
    <section ref={area} className={styles.margin} aria-labelledby={headingId}>
      <header className={styles.head}>
        <h2 id={headingId} ref={heading} tabIndex={-1} data-margin-heading>
          {words.heading}
        </h2>
        <p className={styles.counts}>{marginSummary({ remarks, kept, toRedraw }, mood)}</p>
      </header>
      <YardstickPicker />
      {quieted.length > 0 && (
        <p className={styles.quiet}>
          {words.notJudged} {quieted.map(({ why }) => why).join("; ")}.
        </p>
      )}
      <RemarkList remarks={seen} Acts={Acts} />
      {mood === "unread" && <Unread onRead={() => heading.current?.focus()} />}
      <CalmWords mood={mood} yardstick={yardstick} />
      {children}
      {tidy.length > 0 && <TidyList tidy={tidy} Acts={Acts} />}
      {mood !== "unmarked" && mood !== "empty" && <UntoldList cannotTell={cannotTell} />}
      <ReadingsTable />
      {skipped > 0 && <p className={styles.quiet}>{words.skipped(skipped)}</p>}
      <footer className={styles.foot}>
        <button type="button" className={styles.helpLink} onClick={onHelp}>
          {words.helpLink}
        </button>
      </footer>
    </section>
  );
}

/** What is told of a sheet that was not read. */
const NOTHING: Pick<Review, "remarks" | "kept" | "quieted" | "cannotTell" | "yardstick"> = {
  ...{ remarks: [], kept: [], quieted: [], cannotTell: [], yardstick: "trade" },
};

/** What reads the sheet was asked for, and did not come. */
function useIsUnread(): boolean {
  const state = useReader();
  return state === "unfetched" || state === "asked-again";
}

/** "empty": no panels; "unmarked": panels, and no mark on any; "marked": something to read. */
function emptiness(sheet: { readonly panels: readonly MarkedPanel[] }) {
  if (sheet.panels.length === 0) return "empty";
  return sheet.panels.some(isMarked) ? "marked" : "unmarked";
}

/** How many views of panels have ink that does not follow their figure yet. */
function countToRedraw({ panels }: Sheet): number {
  return panels.reduce(
    (sum, { toRedraw: { side, front } }) => sum + Number(side) + Number(front),
    0,
  );
}

interface MarkedPanel {
  readonly marks: { readonly side: object; readonly front: object };
}

const isMarked = ({ marks }: MarkedPanel): boolean =>
  Object.keys(marks.side).length > 0 || Object.keys(marks.front).length > 0;
