"use client";
import { useId, useMemo, useState } from "react";
import { VIEWS } from "../../lib/geometry";
import { UNSHAPED } from "../../lib/ink";
import type { Sheet } from "../../lib/sheet";
import { Button } from "../_controls";
import { usePanel, useRoom, useSheet } from "../_room";
import { common, gather as words } from "../_words";
import { useWorkspace, useWorkspaceStore } from "../_workspace";
import styles from "./gather.module.css";
import {
  letGo,
  recolourGathered,
  rubOutGathered,
  shapeAboutMiddle,
  shapeGathered,
} from "./gather-deeds";
import { GROW, TURN } from "./gather-keys";

/** How strokes are gathered, and what may be done with those that are. */
export function GatherOptions() {
  const way = useWorkspace((workspace) => workspace.gatherBy);
  const setWay = useWorkspace((workspace) => workspace.setGatherBy);
  const gathered = useWorkspace((workspace) => workspace.gathered);
  const panel = usePanel(gathered?.panel ?? null);
  const count = useMemo(() => {
    const ids = new Set(gathered?.ids);
    const ink = gathered === null ? [] : (panel?.ink[gathered.view] ?? []);
    return ink.filter(({ id }) => ids.has(id)).length;
  }, [gathered, panel]);
  return (
    <section className={styles.options} aria-label={words.name}>
      <fieldset className={styles.pair} aria-label={words.way}>
        {(["lasso", "box"] as const).map((one) => (
          <Button key={one} small aria-pressed={way === one} onClick={() => setWay(one)}>
            {words[one]}
          </Button>
        ))}
      </fieldset>
      <p className={styles.told} role="status">
        {count === 0 ? words.none : words.count(count)}
      </p>
      {count === 0 ? <GatherAll /> : <Deeds />}
    </section>
  );
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

function Deeds() {
  const room = useRoom();
  const workspace = useWorkspaceStore();
  const shape = (change: Parameters<typeof shapeAboutMiddle>[2]) => () =>
    shapeAboutMiddle(room, workspace, change);
  return (
    <>
      <fieldset className={styles.pair} aria-label={words.shape}>
        <Button small onClick={shape({ scale: GROW })}>
          {words.larger}
        </Button>
        <Button small onClick={shape({ scale: 1 / GROW })}>
          {words.smaller}
        </Button>
        <Button small onClick={shape({ turn: -TURN })}>
          {words.turnLeft}
        </Button>
        <Button small onClick={shape({ turn: TURN })}>
          {words.turnRight}
        </Button>
      </fieldset>
      <fieldset className={styles.pair} aria-label={words.colour}>
        {(["graphite", "blue"] as const).map((colour) => (
          <Button key={colour} small onClick={() => recolourGathered(room, workspace, colour)}>
            <span className={styles.ink} data-ink={colour} aria-hidden="true" />
            {words[colour]}
          </Button>
        ))}
      </fieldset>
      <TakeThere />
      <fieldset className={styles.pair} aria-label={words.name}>
        <Button small onClick={() => rubOutGathered(room, workspace)}>
          {words.remove}
        </Button>
        <Button small onClick={() => letGo(workspace)}>
          {words.letGo}
        </Button>
      </fieldset>
    </>
  );
}

const panelsOf = (sheet: Sheet) => sheet.panels;

/** Takes what is gathered to another paper, to the same place on it. */
function TakeThere() {
  const room = useRoom();
  const workspace = useWorkspaceStore();
  const panels = useSheet(panelsOf);
  const gathered = useWorkspace((now) => now.gathered);
  const [chosen, setChosen] = useState("");
  const papers = panels.flatMap(({ id, frame, pose }) =>
    VIEWS.filter((view) => id !== gathered?.panel || view !== gathered.view).map((view) => ({
      ...{ panel: id, view, key: `${id} ${view}` },
      name: words.paper(frame, common.pose[pose], common.view[view]),
    })),
  );
  const paper = papers.find(({ key }) => key === chosen) ?? papers[0];
  if (paper === undefined) return null;
  return (
    <div className={styles.there}>
      <label>
        {words.to}
        <select value={paper.key} onChange={(event) => setChosen(event.currentTarget.value)}>
          {papers.map(({ key, name }) => (
            <option key={key} value={key}>
              {name}
            </option>
          ))}
        </select>
      </label>
      <Button
        small
        onClick={() =>
          shapeGathered(room, workspace, UNSHAPED, { panel: paper.panel, view: paper.view })
        }
      >
        {words.move}
      </Button>
    </div>
  );
}
