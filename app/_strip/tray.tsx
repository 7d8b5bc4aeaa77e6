"use client";
import { Button, Row } from "../_controls";
import { GatherOptions } from "../_gather";
import { JointPicker } from "../_marks";
import { FigureButton, PassOnGroup } from "../_pass-on";
import { PictureGroup, PictureJobLine } from "../_reference";
import { useMayCritique, useMayDraw, useRoom, useStoreValue, useTakesInk } from "../_room";
import { TimeRows } from "../_time";
import { strip } from "../_words";
import { useWorkspace, useWorkspaceStore } from "../_workspace";
import { PanelInHand } from "./panel-in-hand";
import { redoAndSay, undoAndSay } from "./said-deeds";
import styles from "./tray.module.css";
import { PencilRow, RubPartRow, ToolRow } from "./tray-rows";
import { useUndoState } from "./use-undo-state";

/** What is in the hand, what lies under the paper, and the panel in hand. */
export function Tray() {
  const mayDraw = useMayDraw();
  const mayCritique = useMayCritique();
  const desk = useWorkspace((workspace) => workspace.desk);
  const tool = useWorkspace((workspace) => workspace.tool);
  return (
    <nav className={styles.tray} aria-label={strip.tray.name}>
      {mayDraw ? (
        <>
          <h2>{strip.tray.inHand}</h2>
          <ToolRow tool="draw" hint="D" />
          <ToolRow tool="rub-out" hint="R" />
          {tool === "rub-out" && <RubPartRow />}
          <ToolRow tool="mark" hint="M" />
          <ToolRow tool="gather" hint="G" />
          <ToolRow tool="paper" hint="H" />
          {tool === "mark" && (
            <JointPicker>
              <FigureButton />
            </JointPicker>
          )}
          {tool === "gather" && <GatherOptions />}
          {tool !== "mark" && tool !== "gather" && (
            <>
              <h2>{strip.tray.pencils}</h2>
              <PencilRow nib="fine" hint="1" />
              <PencilRow nib="broad" hint="2" />
              <PencilRow nib="under" hint="3" />
            </>
          )}
        </>
      ) : (
        <LookOnly />
      )}
      <UnderThePaper mayDraw={mayDraw} />
      {mayDraw && <PassOnGroup />}
      {mayDraw && !desk && <TimeRows />}
      {mayCritique && <BackAndForth />}
      <PanelInHand mayDraw={mayDraw} />
    </nav>
  );
}

/** Why there is nothing to draw with: the link's doing, or the hub takes nothing more. */
function LookOnly() {
  return (
    <p className={styles.lookOnly}>{useTakesInk() ? strip.tray.viewOnly : strip.tray.stopped}</p>
  );
}

const ONION = [
  { before: 1, after: 0 },
  { before: 1, after: 1 },
  { before: 0, after: 0 },
] as const;

/** The next setting of the onion skin: before, both, none, and round again. */
export function nextOnion(now: { readonly before: number; readonly after: number }) {
  const at = ONION.findIndex(({ before, after }) => before === now.before && after === now.after);
  return ONION[(at + 1) % ONION.length] ?? ONION[0];
}

function UnderThePaper({ mayDraw }: { readonly mayDraw: boolean }) {
  const onion = useWorkspace((workspace) => workspace.onionSkin);
  const setOnion = useWorkspace((workspace) => workspace.setOnionSkin);
  const marksShown = useWorkspace((workspace) => workspace.marksShown);
  const showMarks = useWorkspace((workspace) => workspace.showMarks);
  const turn = () => {
    const next = nextOnion(onion);
    setOnion(next.before, next.after);
  };
  return (
    <>
      <h2>{strip.tray.under}</h2>
      <Row hint="O" onClick={turn} title={strip.tray.onionHint}>
        {strip.tray.onion(onion.before, onion.after)}
      </Row>
      <Row tick={marksShown} onClick={() => showMarks(!marksShown)}>
        {strip.tray.marksShown}
      </Row>
      {mayDraw ? <PictureGroup /> : <PictureJobLine />}
    </>
  );
}

function BackAndForth() {
  const room = useRoom();
  const workspace = useWorkspaceStore();
  const state = useStoreValue(useUndoState(room.undo));
  return (
    <div className={styles.pair}>
      <Button small disabled={!state.canUndo} onClick={() => undoAndSay(room, workspace)}>
        {strip.tray.undo}
      </Button>
      <Button small disabled={!state.canRedo} onClick={() => redoAndSay(room, workspace)}>
        {strip.tray.redo}
      </Button>
    </div>
  );
}
