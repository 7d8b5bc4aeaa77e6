"use client";
import { memo } from "react";
import { redrawDone } from "../../lib/sheet";
import { GhostFigure } from "../_paper";
import { useRoom } from "../_room";
import { common, fixes as words } from "../_words";
import { type LayerProps, useWorkspaceStore } from "../_workspace";
import styles from "./fixes.module.css";
import { RedrawSign } from "./redraw-sign";

const LEAST_NAMED_PX = 84; // a narrower paper has room for the sign alone
const LEAST_BUTTON_PX = 240; // the strip's papers are for drawing; a large one has room to say it is done

/** A paper whose ink does not follow its figure yet: the new figure over the old ink, and a sign. */
export const RedrawLayer = memo(function RedrawLayer(props: LayerProps) {
  const { panel, view, width, mayDraw } = props;
  if (!panel.toRedraw[view]) return null;
  return (
    <>
      <GhostFigure marks={panel.marks[view]} width={width} look="to-redraw" />
      <span className={styles.onPaper} data-to-redraw>
        <RedrawSign />
        {width >= LEAST_NAMED_PX && <span aria-hidden="true">{words.toRedraw}</span>}
        {width >= LEAST_BUTTON_PX && mayDraw && <DoneButton {...props} />}
      </span>
    </>
  );
});

function DoneButton({ panel, view }: LayerProps) {
  const room = useRoom();
  const workspace = useWorkspaceStore();
  const done = () => {
    redrawDone(room.drawing, panel.id, view);
    workspace.getState().say(words.redrawSaid(panel.frame));
  };
  return (
    <button
      type="button"
      aria-label={words.redrawDoneNamed(common.pose[panel.pose], panel.frame, common.view[view])}
      onClick={done}
      onPointerDown={(event) => event.stopPropagation()}
    >
      {words.redrawDone}
    </button>
  );
}
