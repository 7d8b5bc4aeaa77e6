import type { Side } from "../../lib/body";
import { common } from "../_words";
import styles from "./stage.module.css";

/** Left and right, told by colour, shape and word. */
export function SideSign({ side }: { readonly side: Side | null }) {
  if (side === null) return <span className={styles.side}>&nbsp;</span>;
  return (
    <span className={styles.side} data-side={side}>
      <svg width="9" height="9" viewBox="0 0 10 10" aria-hidden="true">
        {side === "left" ? <circle cx="5" cy="5" r="4.4" /> : <path d="M5 0 L10 5 L5 10 L0 5 Z" />}
      </svg>
      {common.side[side]}
    </span>
  );
}
