"use client";
import { VIEWS, type View } from "../../lib/geometry";
import { type Panel, redrawDone } from "../../lib/sheet";
import { Button } from "../_controls";
import { useMayDraw, useRoom, useSheet } from "../_room";
import { common, fixes as words } from "../_words";
import { useWorkspaceStore } from "../_workspace";
import styles from "./fixes.module.css";
import { RedrawSign } from "./redraw-sign";

/** The list's id, to find the way there. */
export const REDRAW_LIST = "to-redraw";

/** In the margin: the drawings whose ink does not follow their figure yet. Nothing where all do. */
export function RedrawList() {
  const panels = useSheet((sheet) => sheet.panels);
  const mayDraw = useMayDraw();
  const papers = panels.flatMap((panel) =>
    VIEWS.flatMap((view) => (panel.toRedraw[view] ? [{ panel, view }] : [])),
  );
  if (papers.length === 0) return null;
  return (
    <section id={REDRAW_LIST} className={styles.list} aria-labelledby="to-redraw-name">
      <h3 id="to-redraw-name">
        <RedrawSign />
        {words.redrawHeading(papers.length)}
      </h3>
      <p>
        {words.redrawWhy} {mayDraw && words.redrawEnds}
      </p>
      <ul>
        {papers.map(({ panel, view }) => (
          <li key={`${panel.id} ${view}`}>
            <RedrawRow panel={panel} view={view} mayDraw={mayDraw} />
          </li>
        ))}
      </ul>
    </section>
  );
}

interface RedrawRowProps {
  readonly panel: Panel;
  readonly view: View;
  readonly mayDraw: boolean;
}

function RedrawRow({ panel, view, mayDraw }: RedrawRowProps) {
  const room = useRoom();
  const workspace = useWorkspaceStore();
  const { id, frame, weightOn } = panel;
  const pose = common.pose[panel.pose];
  const side = weightOn === null ? null : common.side[weightOn];
  const done = () => {
    redrawDone(room.drawing, id, view);
    workspace.getState().say(words.redrawSaid(frame));
  };
  return (
    <>
      <span>
        {words.paper(pose, side, frame)}, {common.view[view]}
      </span>
      <Button
        small
        aria-label={words.redrawShowNamed(pose, frame)}
        onClick={() => workspace.getState().pickPanel(id, view)}
      >
        {words.redrawShow}
      </Button>
      {mayDraw && (
        <Button
          small
          aria-label={words.redrawDoneNamed(pose, frame, common.view[view])}
          onClick={done}
        >
          {words.redrawDone}
        </Button>
      )}
    </>
  );
}
