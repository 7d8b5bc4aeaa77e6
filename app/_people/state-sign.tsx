import type { InkState } from "../_room";
import styles from "./state.module.css";

const PATHS: Record<InkState | "looks", string> = {
  saved: "M3 8.5 6.5 12 13 4.5",
  "in-hand": "M3 13 4 10 11 3 13 5 6 12Z",
  "in-hand-unsaved": "M3 13 4 10 11 3 13 5 6 12Z",
  saving: "M8 2.5v4M8 9.5v4M2.5 8h4M9.5 8h4",
  opening: "M8 2.5v4M8 9.5v4M2.5 8h4M9.5 8h4",
  "not-saved": "M8 2 15 14H1ZM8 6.5v3.5M8 12v.2",
  kept: "M1.5 8h4M10.5 8h4M7 4.5 9 11.5M4 14h8",
  unwritten: "M8 2 15 14H1ZM8 6.5v3.5M8 12v.2",
  "unwritten-kept": "M8 2 15 14H1ZM8 6.5v3.5M8 12v.2",
  offline: "M1.5 8h4M10.5 8h4M7 4.5 9 11.5",
  refused: "M8 2 15 14H1ZM8 6.5v3.5M8 12v.2",
  shut: "M3.5 3.5 12.5 12.5M12.5 3.5 3.5 12.5",
  looks: "M1 8c4-6 10-6 14 0-4 6-10 6-14 0ZM8 6.2a1.8 1.8 0 1 0 .01 0Z",
};

/** The state's sign: told apart by shape alone. */
export function StateSign({ state }: { readonly state: InkState | "looks" }) {
  return (
    <svg className={styles.sign} viewBox="0 0 16 16" aria-hidden="true" focusable="false">
      <path d={PATHS[state]} />
    </svg>
  );
}
