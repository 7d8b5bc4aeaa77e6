"use client";
import { useId, useState } from "react";
import { useRoom, useStoreValue } from "../_room";
import { stateWords } from "./ink-words";
import styles from "./state.module.css";
import { StateSign } from "./state-sign";
import { useSpokenChange } from "./use-spoken-change";

/** Says truthfully whether the ink is saved: sign and words, the reason on hover and focus. */
export function StateLine() {
  const room = useRoom();
  const state = useStoreValue(room.ink);
  const role = useStoreValue(room.role);
  const shutBy = useStoreValue(room.shutBy);
  const unsaved = (useStoreValue(room.told)?.lost.length ?? 0) > 0;
  const [told, setTold] = useState(false);
  const whyId = useId();
  const spoken = useSpokenChange(state, shutBy);
  const { words, why } = stateWords(state, role, shutBy, unsaved);
  const looks = state === "saved" && (role === "view" || role === "critique");
  return (
    <div className={styles.hold} onPointerLeave={() => setTold(false)}>
      <button
        type="button"
        className={styles.state}
        data-state={state}
        aria-describedby={whyId}
        onPointerEnter={() => setTold(true)}
        onFocus={() => setTold(true)}
        onBlur={() => setTold(false)}
        onClick={() => setTold(true)}
        onKeyDown={(event) => {
          if (event.key !== "Escape" || !told) return;
          event.stopPropagation();
          setTold(false);
        }}
      >
        <StateSign state={looks ? "looks" : state} />
        <span className={styles.words}>{words}</span>
      </button>
      <div id={whyId} role="tooltip" className={told ? styles.why : styles.whyFolded}>
        {why}
      </div>
      <div className="heard" role="status">
        {spoken}
      </div>
    </div>
  );
}
