"use client";
import { Button } from "../_controls";
import { useRoom } from "../_room";
import { gather as words } from "../_words";
import { useWorkspace, useWorkspaceStore } from "../_workspace";
import styles from "./gather.module.css";
import { letGo, recolourGathered, rubOutGathered, shapeAboutMiddle } from "./gather-deeds";
import { GROW, TURN } from "./gather-keys";
import { TakeThere } from "./take-there";

const SHAPES = [
  { word: "larger", change: { scale: GROW } },
  { word: "smaller", change: { scale: 1 / GROW } },
  { word: "turnLeft", change: { turn: -TURN } },
  { word: "turnRight", change: { turn: TURN } },
] as const;

export interface GatheredDeedsProps {
  /** Nothing is gathered any more, so these buttons go. */
  readonly onGone: () => void;
}

/** What may be done with what is gathered, by buttons: each press is one step of undo. */
export function GatheredDeeds({ onGone }: GatheredDeedsProps) {
  const room = useRoom();
  const workspace = useWorkspaceStore();
  const adds = useWorkspace((now) => now.gatherAdds);
  const setAdds = useWorkspace((now) => now.setGatherAdds);
  const ending = (end: () => boolean) => () => {
    if (end()) onGone();
  };
  return (
    <>
      <fieldset className={styles.pair} aria-label={words.shape}>
        {SHAPES.map(({ word, change }) => (
          <Button key={word} small onClick={() => shapeAboutMiddle(room, workspace, change)}>
            {words[word]}
          </Button>
        ))}
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
      <fieldset className={styles.pair} aria-label={words.hold}>
        <Button small aria-pressed={adds} onClick={() => setAdds(!adds)}>
          {words.add}
        </Button>
        <Button small onClick={ending(() => letGo(room, workspace))}>
          {words.letGo}
        </Button>
        <Button small onClick={ending(() => rubOutGathered(room, workspace))}>
          {words.remove}
        </Button>
      </fieldset>
    </>
  );
}
