"use client";
import { type FormEvent, useState } from "react";
import {
  BRIEF_DEFAULTS,
  BRIEF_KINDS,
  BRIEF_RANGES,
  leastFramesPerStep,
} from "../../shared/brief-defaults";
import { Button } from "../_controls";
import { common, start } from "../_words";
import { briefOf, framesAhead } from "./brief-of";
import { NumberField } from "./number-field";
import styles from "./start.module.css";

export interface BriefFormProps {
  readonly busy: boolean;
  readonly onStart: (brief: unknown) => void;
}

/** The brief: what the strip is laid out from. */
export function BriefForm({ busy, onStart }: BriefFormProps) {
  const [leadIn, setLeadIn] = useState(false);
  const [exposure, setExposure] = useState<1 | 2>(1);
  const [left, setLeft] = useState<number>(BRIEF_DEFAULTS.framesPerStep.left);
  const [right, setRight] = useState<number>(BRIEF_DEFAULTS.framesPerStep.right);
  const send = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    onStart(briefOf(new FormData(event.currentTarget), { leadIn, exposure }));
  };
  const frames = { ...BRIEF_RANGES.framesPerStep, min: leastFramesPerStep(exposure) };
  return (
    <form className={styles.form} onSubmit={send}>
      <p className={styles.hint}>{start.newWalkHint}</p>
      <label className={styles.wide}>
        {start.title}
        <input
          name="title"
          maxLength={BRIEF_RANGES.titleLength.max}
          placeholder={start.titlePlaceholder}
          autoComplete="off"
        />
      </label>
      <label>
        {start.shot}
        <input name="shot" maxLength={BRIEF_RANGES.shotLength.max} autoComplete="off" />
      </label>
      <label>
        {start.kind}
        <select name="kind" defaultValue={BRIEF_DEFAULTS.kind}>
          {BRIEF_KINDS.map((kind) => (
            <option key={kind} value={kind}>
              {start.kinds[kind]}
            </option>
          ))}
        </select>
      </label>
      <fieldset>
        <legend>{start.timing}</legend>
        <NumberField
          name="framesPerSecond"
          label={start.framesPerSecond}
          range={BRIEF_RANGES.framesPerSecond}
          initial={BRIEF_DEFAULTS.framesPerSecond}
          step="any"
        />
        <label>
          {start.exposure}
          <select
            value={exposure}
            onChange={(event) => setExposure(event.currentTarget.value === "2" ? 2 : 1)}
          >
            <option value="1">{common.drawn[1]}</option>
            <option value="2">{common.drawn[2]}</option>
          </select>
        </label>
        <NumberField
          name="left"
          label={start.framesLeft}
          range={frames}
          initial={left}
          onNumber={setLeft}
        />
        <NumberField
          name="right"
          label={start.framesRight}
          range={frames}
          initial={right}
          onNumber={setRight}
        />
      </fieldset>
      <fieldset>
        <legend>{start.ground}</legend>
        <NumberField
          name="stepLength"
          label={`${start.stepLength}, ${start.stepLengthUnit}`}
          range={BRIEF_RANGES.stepLength}
          step={0.01}
          initial={BRIEF_DEFAULTS.stepLength}
        />
        <label className={styles.two}>
          {start.ground}
          <select name="travel" defaultValue={BRIEF_DEFAULTS.travel}>
            <option value="on-the-spot">{start.onTheSpot}</option>
            <option value="travelling">{start.travelling}</option>
          </select>
        </label>
      </fieldset>
      <fieldset>
        <legend>{start.build}</legend>
        <NumberField
          name="headsTall"
          label={start.headsTall}
          range={BRIEF_RANGES.headsTall}
          step={0.1}
          initial={BRIEF_DEFAULTS.build.headsTall}
        />
        <NumberField
          name="legPercent"
          label={start.legShare}
          range={{ min: BRIEF_RANGES.legShare.min * 100, max: BRIEF_RANGES.legShare.max * 100 }}
          initial={BRIEF_DEFAULTS.build.legShare * 100}
        />
        <NumberField
          name="statureMetres"
          label={start.stature}
          range={BRIEF_RANGES.statureMetres}
          step={0.01}
          hint={start.statureHint}
        />
      </fieldset>
      <label className={styles.check}>
        <input
          type="checkbox"
          checked={leadIn}
          onChange={(event) => setLeadIn(event.currentTarget.checked)}
        />
        {start.leadIn}
      </label>
      <FramesAhead left={left} right={right} exposure={exposure} leadIn={leadIn} />
      <Button look="main" type="submit" disabled={busy}>
        {busy ? start.going : start.go}
      </Button>
    </form>
  );
}

interface FramesAheadProps {
  readonly left: number;
  readonly right: number;
  readonly exposure: 1 | 2;
  readonly leadIn: boolean;
}

/** The frames that the strip will hold, before anything is made. */
function FramesAhead(ahead: FramesAheadProps) {
  const frames = framesAhead(ahead);
  const least = leastFramesPerStep(ahead.exposure);
  const tooFew = Math.min(ahead.left, ahead.right) < least;
  if (frames === null && !tooFew) return null;
  return (
    <p className={styles.frames} aria-live="polite">
      {frames === null ? (
        start.tooFewFrames(least, ahead.exposure)
      ) : (
        <>
          {start.preview} <b>{frames.join(" ")}</b>
        </>
      )}
    </p>
  );
}
