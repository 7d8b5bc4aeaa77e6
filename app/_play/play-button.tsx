"use client";
import { play as words } from "../_words";
import { useWorkspace } from "../_workspace";
import styles from "./play.module.css";

/** Round, at the ruler's left end, where the walk begins. */
export function PlayButton() {
  const playing = useWorkspace((workspace) => workspace.playing);
  const play = useWorkspace((workspace) => workspace.play);
  return (
    <button
      type="button"
      className={styles.button}
      aria-label={playing ? words.stop : words.play}
      title={words.hint}
      onClick={() => play(!playing)}
    >
      <svg viewBox="0 0 24 24" width="20" height="20" aria-hidden="true">
        {playing ? <path d="M6 5h12v14H6z" /> : <path d="M8 4.5 19.5 12 8 19.5z" />}
      </svg>
    </button>
  );
}
