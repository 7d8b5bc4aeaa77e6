"use client";
import { type FormEvent, useState } from "react";
import { KINDS } from "../../lib/gait";
import { amendHead, type SheetHead, setTravel } from "../../lib/sheet";
import { BRIEF_RANGES } from "../../shared/brief-defaults";
import { Button, Dialog, ThemeSwitch } from "../_controls";
import { ExportButton, PicturesLeftOut } from "../_handover";
import { useMayDraw, useRoom, useSheet } from "../_room";
import { common, start, strip } from "../_words";
import styles from "./sheet-dialog.module.css";

/** The sheet's head, to read and to change; its file; the light; the way out. */
export function SheetDialog({ onClose }: { readonly onClose: () => void }) {
  const head = useSheet((sheet) => sheet.head);
  const mayDraw = useMayDraw();
  return (
    <Dialog title={strip.head.about} closeLabel={common.close} onClose={onClose}>
      <HeadForm head={head} mayDraw={mayDraw} onDone={onClose} />
      {head.credit !== "" && <p className={styles.credit}>{head.credit}</p>}
      <PicturesLeftOut from="file" />
      <footer className={styles.foot}>
        <ExportButton />
        <ThemeSwitch words={strip.theme} />
        <a href="/">{strip.head.start}</a>
      </footer>
    </Dialog>
  );
}

const MOST_LOAD_PERCENT = 1000; // no source, generous: ten times the body
const MOST_SHOT_FRAME = 10_000_000; // as the sheet keeps it

interface HeadFormProps {
  readonly head: SheetHead;
  readonly mayDraw: boolean;
  readonly onDone: () => void;
}

function HeadForm({ head, mayDraw, onDone }: HeadFormProps) {
  const { drawing, sheet } = useRoom();
  const [travel, chooseTravel] = useState(head.travel);
  const save = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const changes = changedHead(new FormData(event.currentTarget), head);
    if (travel !== head.travel) setTravel(drawing, sheet.getSnapshot(), travel);
    if (Object.keys(changes).length > 0) amendHead(drawing, changes);
    onDone();
  };
  return (
    <form className={styles.form} onSubmit={save}>
      <fieldset disabled={!mayDraw}>
        <label className={styles.wide}>
          {start.title}
          <input
            name="title"
            required
            defaultValue={head.title}
            maxLength={BRIEF_RANGES.titleLength.max}
          />
        </label>
        <label>
          {start.shot}
          <input name="shot" defaultValue={head.shot} maxLength={BRIEF_RANGES.shotLength.max} />
        </label>
        <label>
          {start.kind}
          <select name="kind" defaultValue={head.kind}>
            {KINDS.map((kind) => (
              <option key={kind} value={kind}>
                {start.kinds[kind]}
              </option>
            ))}
          </select>
        </label>
        <label>
          {start.framesPerSecond}
          <input
            name="framesPerSecond"
            type="number"
            required
            min={BRIEF_RANGES.framesPerSecond.min}
            max={BRIEF_RANGES.framesPerSecond.max}
            step="any"
            defaultValue={head.framesPerSecond}
          />
        </label>
        <label>
          {strip.head.firstFrame}
          <input
            name="firstFrame"
            type="number"
            required
            min={-MOST_SHOT_FRAME}
            max={MOST_SHOT_FRAME}
            title={strip.head.firstFrameHint}
            defaultValue={head.firstFrame ?? 1}
          />
        </label>
        <label>
          {start.load}
          <input
            name="loadPercent"
            type="number"
            min={0}
            max={MOST_LOAD_PERCENT}
            step="any"
            title={start.loadHint}
            defaultValue={percentOf(head.load)}
          />
        </label>
        <label>
          {start.exposure}
          <select name="exposure" defaultValue={`${head.exposure}`}>
            <option value="1">{common.drawn[1]}</option>
            <option value="2">{common.drawn[2]}</option>
          </select>
        </label>
        <label>
          {`${start.stepLength}, ${start.stepLengthUnit}`}
          <input
            name="stepLength"
            type="number"
            required
            min={BRIEF_RANGES.stepLength.min}
            max={BRIEF_RANGES.stepLength.max}
            step="any"
            defaultValue={Number(head.stepLength.toFixed(3))}
          />
        </label>
        <label>
          {start.places}
          <select name="ground" defaultValue={head.ground ?? "by-travel"}>
            <option value="by-travel">{start.byTravel}</option>
            <option value="solved">{start.solved}</option>
          </select>
        </label>
        <label className={styles.wide}>
          {start.ground}
          <select
            value={travel}
            onChange={(event) =>
              chooseTravel(
                event.currentTarget.value === "travelling" ? "travelling" : "on-the-spot",
              )
            }
          >
            <option value="on-the-spot">{start.onTheSpot}</option>
            <option value="travelling">{start.travelling}</option>
          </select>
        </label>
        {mayDraw && (
          <Button look="main" type="submit">
            {strip.head.keep}
          </Button>
        )}
      </fieldset>
    </form>
  );
}

/** A load as a person reads it; nothing is 0. Shares of body mass → percent. */
function percentOf(load: number | undefined): number {
  return Number((100 * (load ?? 0)).toFixed(2));
}

/** Only what was changed: somebody else may be changing the rest. */
function changedHead(form: FormData, head: SheetHead): Partial<SheetHead> {
  const text = (name: string) => String(form.get(name) ?? "").trim();
  const stepLength = Number(text("stepLength"));
  const kept = Number(head.stepLength.toFixed(3));
  const ground = text("ground") === "solved" ? "solved" : "by-travel";
  const wanted: Partial<SheetHead> = {
    title: text("title") === "" ? head.title : text("title"),
    shot: text("shot"),
    kind: KINDS.find((kind) => kind === text("kind")) ?? head.kind,
    framesPerSecond: Number(text("framesPerSecond")),
    ...(Number(text("firstFrame")) === (head.firstFrame ?? 1)
      ? {}
      : { firstFrame: Number(text("firstFrame")) }),
    ...(Number(text("loadPercent")) === percentOf(head.load)
      ? {}
      : { load: Number(text("loadPercent")) / 100 }),
    exposure: text("exposure") === "2" ? 2 : 1,
    ...(ground === (head.ground ?? "by-travel") ? {} : { ground }),
    ...(stepLength === kept ? {} : { stepLength }), // the advance follows, unless it was set by hand
  };
  return Object.fromEntries(
    Object.entries(wanted).filter(([name, value]) => head[name as keyof SheetHead] !== value),
  );
}
