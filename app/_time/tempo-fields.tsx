"use client";
import { SIDES } from "../../lib/body";
import type { NewTempo } from "../../lib/sheet";
import { common, time } from "../_words";
import { useWorkspace } from "../_workspace";
import styles from "./time.module.css";
import { MOST_FRAMES } from "./timing-plan";

export interface TempoFieldsProps {
  readonly tempo: NewTempo;
  /** The element that says what the numbers would do, or what is wrong with them. */
  readonly describedBy: string;
}

/** Frames a step: left and right, or those of one step. */
export function TempoFields({ tempo, describedBy }: TempoFieldsProps) {
  const setTiming = useWorkspace((workspace) => workspace.setTiming);
  if (tempo.scope !== "strip") {
    return (
      <Frames
        label={time.framesOfThisStep}
        word={time.frames}
        frames={tempo.frames}
        describedBy={describedBy}
        onChange={(frames) => setTiming({ what: "retime", tempo: { ...tempo, frames } })}
      />
    );
  }
  return SIDES.map((side) => (
    <Frames
      key={side}
      label={time.framesOfStep(common.side[side])}
      word={common.side[side]}
      frames={tempo.framesPerStep[side]}
      describedBy={describedBy}
      onChange={(frames) => {
        const framesPerStep = { ...tempo.framesPerStep, [side]: frames };
        setTiming({ what: "retime", tempo: { ...tempo, framesPerStep } });
      }}
    />
  ));
}

interface FramesProps {
  readonly label: string;
  readonly word: string;
  /** Not a number while the field is empty. */
  readonly frames: number;
  readonly describedBy: string;
  readonly onChange: (frames: number) => void;
}

function Frames({ label, word, frames, describedBy, onChange }: FramesProps) {
  return (
    <label className={styles.frames}>
      <span aria-hidden="true">{word}</span>
      <input
        type="number"
        inputMode="numeric"
        aria-label={label}
        aria-describedby={describedBy}
        min={1}
        max={MOST_FRAMES}
        step={1}
        value={Number.isNaN(frames) ? "" : frames}
        onChange={({ currentTarget: { value } }) =>
          onChange(value.trim() === "" ? Number.NaN : Number(value))
        }
      />
    </label>
  );
}
