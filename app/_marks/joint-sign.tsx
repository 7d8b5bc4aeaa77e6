import type { Side } from "../../lib/body";
import styles from "./picker.module.css";

const SIGN = { left: "●", right: "◆" } as const;

/** ● left, ◆ right, ■ neither: as the marks on the paper. */
export function SideSign({ side }: { readonly side: Side | null }) {
  return (
    <span className={styles.sign} data-side={side} aria-hidden="true">
      {side === null ? "■" : SIGN[side]}
    </span>
  );
}
