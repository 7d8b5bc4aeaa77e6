"use client";
import { SIDES } from "../../lib/body";
import { placesOf } from "../../lib/gait";
import { POSES } from "../../lib/motion";
import {
  addPanel,
  type Panel,
  relabelPanel,
  type Sheet,
  setHold,
  setPlace,
  slidePanel,
  walkOf,
} from "../../lib/sheet";
import { Button, Choice } from "../_controls";
import { freshPanelId, usePanel, useRoom, useSheet } from "../_room";
import { common, strip } from "../_words";
import { useWorkspace, useWorkspaceStore } from "../_workspace";
import { CommittedNumber } from "./committed-number";
import { panelAfter } from "./panel-after";
import { removeAndSay } from "./said-deeds";
import styles from "./tray.module.css";

const MOST_FRAME = 99_999; // over an hour at 24 a second: no walk is as long
const MOST_HELD = 10_000; // frames, as the sheet keeps them
const NOBODY = "";
const MOST_PLACE = 10_000; // leg lengths: about nine kilometres

/** The panel in hand: its pose, whose weight, its frame; a way to the desk, to more and fewer. */
export function PanelInHand({ mayDraw }: { readonly mayDraw: boolean }) {
  const id = useWorkspace((workspace) => workspace.panel);
  const desk = useWorkspace((workspace) => workspace.desk);
  const openDesk = useWorkspace((workspace) => workspace.openDesk);
  const panel = usePanel(id);
  return (
    <section className={styles.panel} data-desk={desk} aria-labelledby="panel-in-hand">
      <h2 id="panel-in-hand">{strip.tray.panel}</h2>
      {panel === undefined ? (
        <p className={styles.quiet}>{strip.tray.noPanel}</p>
      ) : (
        <>
          {!desk && (
            <Button small onClick={() => openDesk(panel.id)}>
              {strip.tray.desk}
            </Button>
          )}
          {mayDraw && <PanelFields panel={panel} />}
          {mayDraw && <MoreAndFewer panel={panel} />}
        </>
      )}
    </section>
  );
}

function PanelFields({ panel }: { readonly panel: Panel }) {
  const { drawing } = useRoom();
  const solved = useSheet((sheet) => sheet.head.ground === "solved");
  const travelling = useSheet((sheet) => sheet.head.travel === "travelling");
  const { pose, weightOn } = panel;
  return (
    <div className={styles.fields}>
      <Choice
        label={strip.tray.pose}
        value={pose}
        options={POSES.map((name) => ({ value: name, words: common.pose[name] }))}
        onChoose={(chosen) => relabelPanel(drawing, panel.id, { pose: chosen, weightOn })}
      />
      <Choice
        label={strip.tray.weightOn}
        value={weightOn ?? NOBODY}
        options={[
          { value: NOBODY, words: strip.tray.nobody },
          ...SIDES.map((side) => ({ value: side, words: common.side[side] })),
        ]}
        onChoose={(chosen) => {
          relabelPanel(drawing, panel.id, { pose, weightOn: chosen === NOBODY ? null : chosen });
        }}
      />
      <CommittedNumber
        label={strip.tray.frame}
        value={panel.frame}
        least={1}
        most={MOST_FRAME}
        onCommit={(frame) => slidePanel(drawing, panel.id, Math.round(frame ?? 1))}
      />
      <CommittedNumber
        label={strip.tray.hold}
        hint={strip.tray.holdHint}
        value={panel.hold}
        least={0}
        most={MOST_HELD}
        onCommit={(hold) => setHold(drawing, panel.id, Math.round(hold ?? 0))}
      />
      {(travelling || solved) && (
        <CommittedNumber
          label={strip.tray.place}
          hint={solved ? strip.tray.placeSolvedHint : strip.tray.placeHint}
          value={panel.place}
          least={-MOST_PLACE}
          most={MOST_PLACE}
          step={0.01}
          mayBeEmpty
          onCommit={(place) => setPlace(drawing, panel.id, place)}
        />
      )}
      {solved && <SolvedPlace panel={panel} />}
    </div>
  );
}

const whole = (sheet: Sheet): Sheet => sheet;

/** Where the planted feet have this panel stand, for as long as nobody sets it. */
function SolvedPlace({ panel }: { readonly panel: Panel }) {
  const sheet = useSheet(whole);
  const { kind, x, plusMinus } = placesOf(walkOf(sheet))(panel);
  if (kind === "set") return null;
  const legs = x.toFixed(2);
  return (
    <p className={styles.quiet}>
      {kind === "solved"
        ? strip.tray.placeSolved(legs, plusMinus.toFixed(2))
        : strip.tray.placeGoesOn(legs)}
    </p>
  );
}

function MoreAndFewer({ panel }: { readonly panel: Panel }) {
  const room = useRoom();
  const workspace = useWorkspaceStore();
  const add = () => {
    const id = freshPanelId();
    addPanel(room.drawing, id, panelAfter(room.sheet.getSnapshot(), panel.id));
    workspace.getState().pickPanel(id);
  };
  return (
    <>
      <Button small onClick={add}>
        {strip.tray.add}
      </Button>
      <Button small onClick={() => removeAndSay(room, workspace, panel.id)}>
        {strip.tray.remove}
      </Button>
    </>
  );
}
