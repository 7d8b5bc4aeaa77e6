"use client";
import { useState } from "react";
import { VIEWS, type View } from "../../lib/geometry";
import { Button } from "../_controls";
import { useSheet } from "../_room";
import { common, play as words } from "../_words";
import { useWorkspace } from "../_workspace";
import styles from "./play.module.css";
import { PlayPaper } from "./play-paper";
import { panelAt } from "./playhead";
import { usePlayhead } from "./use-playhead";

const CYCLES = [0, 1, 2, 4] as const; // 0: for ever
const SPEEDS = [1, 0.5, 0.25] as const;
type Shown = View | "both";
const SHOWN: readonly Shown[] = ["both", ...VIEWS];

/** The strip at speed: the drawings large, one after the other, round and round. */
export function PlayStage() {
  usePlayhead();
  const frame = useWorkspace((workspace) => workspace.playFrame);
  const play = useWorkspace((workspace) => workspace.play);
  const speed = useWorkspace((workspace) => workspace.speed);
  const cycles = useWorkspace((workspace) => workspace.cycles);
  const setCycles = useWorkspace((workspace) => workspace.setCycles);
  const setSpeed = useWorkspace((workspace) => workspace.setSpeed);
  const panels = useSheet((sheet) => sheet.panels);
  const exposure = useSheet((sheet) => sheet.head.exposure);
  const [shown, setShown] = useState<Shown>("both");
  const panel = panelAt(panels, frame ?? 1, exposure);
  const views = shown === "both" ? VIEWS : [shown];
  return (
    <section className={styles.stage} aria-label={words.stage}>
      <div className={styles.papers} data-shown={shown}>
        {views.map((view) => (
          <PlayPaper key={view} panel={panel} panels={panels} view={view} />
        ))}
      </div>
      <footer className={styles.controls}>
        <Button look="main" onClick={() => play(false)}>
          {words.stop}
        </Button>
        <p className={styles.frame}>
          <b>{frame ?? panel?.frame ?? ""}</b>
          {panel === undefined ? words.empty : common.pose[panel.pose]}
        </p>
        <Choice
          legend={words.speed}
          values={SPEEDS}
          word={(value) => words.speeds[value]}
          chosen={speed}
          onChoose={setSpeed}
        />
        <Choice
          legend={words.cycles}
          values={CYCLES}
          word={(value) => words.times[value]}
          chosen={cycles ?? 0}
          onChoose={(value) => setCycles(value === 0 ? null : value)}
        />
        <Choice
          legend={words.shown}
          values={SHOWN}
          word={(value) => words.views[value]}
          chosen={shown}
          onChoose={setShown}
        />
      </footer>
    </section>
  );
}

interface ChoiceProps<T extends string | number> {
  readonly legend: string;
  readonly values: readonly T[];
  readonly word: (value: T) => string;
  readonly chosen: number | string;
  readonly onChoose: (value: T) => void;
}

function Choice<T extends string | number>(props: ChoiceProps<T>) {
  const { legend, values, word, chosen, onChoose } = props;
  return (
    <fieldset className={styles.choice}>
      <legend className="heard">{legend}</legend>
      {values.map((value) => (
        <button
          key={value}
          type="button"
          aria-pressed={value === chosen}
          onClick={() => onChoose(value)}
        >
          {word(value)}
        </button>
      ))}
    </fieldset>
  );
}
