"use client";
import {
  type Kept,
  type Lapsed,
  measuredIn,
  type OnPurpose,
  type OnPurposeScope,
  type Review,
} from "../../lib/gait";
import { dropOnPurpose, keepOnPurpose, type Sheet } from "../../lib/sheet";
import { Button } from "../_controls";
import { useMayCritique, useReview, useRoom, useSheet } from "../_room";
import { common, remarks as told, purpose as words } from "../_words";
import { useWorkspaceStore } from "../_workspace";
import { KeptSign } from "./kept-sign";
import styles from "./purpose.module.css";

/** The list's id, to find the way there. */
export const KEPT_LIST = "kept-on-purpose";

/** In the margin: what is kept on purpose, folded, and what no longer is what was kept. */
export function KeptList() {
  const review = useReview();
  return review === null ? null : <Lists review={review} />;
}

function Lists({ review: { kept, lapsed, settled } }: { readonly review: Review }) {
  const entries = byEntry(kept);
  return (
    <>
      {lapsed.length > 0 && (
        <section className={styles.lapsed} aria-label={words.lapsedName}>
          <ul>
            {lapsed.map((one) => (
              <li key={one.entry.id}>
                <LapsedRow lapsed={one} />
              </li>
            ))}
          </ul>
        </section>
      )}
      {entries.length > 0 && (
        <details id={KEPT_LIST} className={styles.fold}>
          <summary>
            <KeptSign /> {words.heading(kept.length)}
          </summary>
          <ul>
            {entries.map(({ entry, found }) => (
              <li key={entry.id}>
                <KeptRow entry={entry} found={found} />
              </li>
            ))}
          </ul>
        </details>
      )}
      {settled.length > 0 && (
        <details className={styles.fold}>
          <summary>{words.settled(settled.length)}</summary>
          <p>{words.settledWhy}</p>
          <ul>
            {settled.map((entry) => (
              <li key={entry.id}>
                <SettledRow entry={entry} />
              </li>
            ))}
          </ul>
        </details>
      )}
    </>
  );
}

interface EntryFound {
  readonly entry: OnPurpose;
  readonly found: readonly Kept[];
}

/** Entries that hold something, each with what it holds, in the order of their gravest. */
function byEntry(kept: readonly Kept[]): readonly EntryFound[] {
  const entries = [...new Set(kept.map(({ entry }) => entry))];
  return entries.map((entry) => ({ entry, found: kept.filter((one) => one.entry === entry) }));
}

function KeptRow({ entry, found }: EntryFound) {
  const workspace = useWorkspaceStore();
  const drop = useDrop();
  const mayKeep = useMayCritique();
  const [first, ...more] = found;
  const title = first?.remark.title ?? told.check[entry.check];
  const show = () => {
    const panel = first?.remark.panels.at(-1);
    if (panel !== undefined) {
      workspace.getState().pickPanel(panel, first?.remark.spots.at(-1)?.view);
    }
  };
  return (
    <article className={styles.kept}>
      <h4>
        {title}
        {more.length > 0 && <span> {words.andMore(more.length)}</span>}
      </h4>
      <Reason entry={entry} />
      <div className={styles.pair}>
        <Button small aria-label={words.showNamed(title)} onClick={show}>
          {told.show}
        </Button>
        {mayKeep && (
          <Button small aria-label={words.dropNamed(title)} onClick={() => drop(entry, title)}>
            {words.drop}
          </Button>
        )}
      </div>
    </article>
  );
}

function LapsedRow({ lapsed: { entry, change, now, remarks } }: { readonly lapsed: Lapsed }) {
  const room = useRoom();
  const drop = useDrop();
  const mayKeep = useMayCritique();
  const title = remarks[0]?.title ?? told.check[entry.check];
  return (
    <article className={styles.kept}>
      <h4>{words.lapsed(title)}</h4>
      <p>{words.changed[change]}</p>
      <Reason entry={entry} />
      {mayKeep && (
        <div className={styles.pair}>
          <Button
            small
            aria-label={words.keepAgainNamed(title)}
            onClick={() =>
              keepOnPurpose(room.critique, {
                ...entry,
                measured: now,
                ...measuredIn(remarks, entry.scope),
              })
            }
          >
            {words.keepAgain}
          </Button>
          <Button small aria-label={words.dropNamed(title)} onClick={() => drop(entry, title)}>
            {words.drop}
          </Button>
        </div>
      )}
    </article>
  );
}

function SettledRow({ entry }: { readonly entry: OnPurpose }) {
  const drop = useDrop();
  const mayKeep = useMayCritique();
  const title = told.check[entry.check];
  return (
    <article className={styles.kept}>
      <h4>{title}</h4>
      <Reason entry={entry} />
      {mayKeep && (
        <Button small aria-label={words.dropNamed(title)} onClick={() => drop(entry, title)}>
          {words.drop}
        </Button>
      )}
    </article>
  );
}

function useDrop(): (entry: OnPurpose, title: string) => void {
  const room = useRoom();
  const workspace = useWorkspaceStore();
  return ({ id }, title) => {
    dropOnPurpose(room.critique, id);
    workspace.getState().say(words.droppedSaid(title));
  };
}

const panelsOf = (sheet: Sheet) => sheet.panels;

function Reason({ entry }: { readonly entry: OnPurpose }) {
  const panels = useSheet(panelsOf);
  const { reason, by, scope } = entry;
  return (
    <>
      {reason !== "" && <p className={styles.quote}>{reason}</p>}
      <p className={styles.by}>{words.by(by, scopeTold(scope, panels))}</p>
    </>
  );
}

function scopeTold(scope: OnPurposeScope, panels: Sheet["panels"]): string {
  if (scope.kind === "walk") return words.scopes.walk;
  if (scope.kind === "side") return words.scopes.side(common.side[scope.side]);
  const panel = panels.find(({ id }) => id === scope.panel);
  return panel === undefined ? words.scopes.panel : words.atFrame(panel.frame);
}
