"use client";
import type { Yardstick } from "../../lib/gait";
import { Button } from "../_controls";
import { useMayDraw } from "../_room";
import { remarks as words } from "../_words";
import { useWorkspaceStore } from "../_workspace";
import styles from "./margin.module.css";
import type { MarginMood } from "./margin-mood";

export interface CalmWordsProps {
  readonly mood: MarginMood;
  readonly yardstick: Yardstick;
}

/** Moods that speak for themselves. */
type Told = Extract<MarginMood, "remarks" | "unread">;

/** One sentence where there is no remark: what to do next, or that nothing stands out. */
export function CalmWords({ mood, yardstick }: CalmWordsProps) {
  const workspace = useWorkspaceStore();
  const mayDraw = useMayDraw();
  if (isTold(mood)) return null;
  const name = words.yardstick.name[yardstick];
  const sentences = {
    empty: words.emptyStrip,
    unmarked: mayDraw ? words.noMarks : words.noMarksLooking,
    reading: words.reading,
    redraw: words.redrawFirst,
    sound: words.sound(name),
    open: words.soundSoFar(name),
  } satisfies Record<Exclude<MarginMood, Told>, string>;
  return (
    <div className={styles.calm}>
      <p>{sentences[mood]}</p>
      {mood === "unmarked" && mayDraw && (
        <Button small onClick={() => workspace.getState().take("mark")}>
          {words.takeMarks}
        </Button>
      )}
    </div>
  );
}

const isTold = (mood: MarginMood): mood is Told => mood === "remarks" || mood === "unread";
