"use client";
import { useId, useMemo, useRef } from "react";
import { Button } from "../_controls";
import { usePanel } from "../_room";
import { gather as words } from "../_words";
import { useWorkspace } from "../_workspace";
import styles from "./gather.module.css";
import { GatheredDeeds } from "./gathered-deeds";

/** How strokes are gathered, and what may be done with those that are. */
export function GatherOptions() {
  const options = useRef<HTMLElement>(null);
  const way = useWorkspace((workspace) => workspace.gatherBy);
  const setWay = useWorkspace((workspace) => workspace.setGatherBy);
  const count = useGatheredCount();
  return (
    <section ref={options} className={styles.options} aria-label={words.name} tabIndex={-1}>
      <fieldset className={styles.way} aria-label={words.way}>
        {(["lasso", "box"] as const).map((one) => (
          <Button key={one} small aria-pressed={way === one} onClick={() => setWay(one)}>
            {words[one]}
          </Button>
        ))}
        <kbd>L</kbd>
      </fieldset>
      <p className={styles.told} role="status">
        {count === 0 ? words.none : words.count(count)}
      </p>
      {count > 0 && <p className={styles.keys}>{words.keys}</p>}
      {count === 0 ? <GatherAll /> : <GatheredDeeds onGone={() => options.current?.focus()} />}
    </section>
  );
}

/** How many of the gathered strokes are still there: others may rub one out. */
function useGatheredCount(): number {
  const gathered = useWorkspace((workspace) => workspace.gathered);
  const panel = usePanel(gathered?.panel ?? null);
  return useMemo(() => {
    const ids = new Set(gathered?.ids);
    const ink = gathered === null ? [] : (panel?.ink[gathered.view] ?? []);
    return ink.filter(({ id }) => ids.has(id)).length;
  }, [gathered, panel]);
}

/** For whoever cannot draw round them. */
function GatherAll() {
  const id = useWorkspace((workspace) => workspace.panel);
  const view = useWorkspace((workspace) => workspace.view);
  const gather = useWorkspace((workspace) => workspace.gather);
  const panel = usePanel(id);
  const told = useId();
  const ink = panel?.ink[view] ?? [];
  const ids = ink.map((stroke) => stroke.id);
  const why = panel === undefined ? words.noPanel : ids.length === 0 ? words.nothing : null;
  return (
    <>
      <Button
        small
        disabled={why !== null}
        aria-describedby={why === null ? undefined : told}
        onClick={() => panel !== undefined && gather({ panel: panel.id, view, ids })}
      >
        {words.all}
      </Button>
      {why !== null && (
        <p id={told} className={styles.why}>
          {why}
        </p>
      )}
    </>
  );
}
