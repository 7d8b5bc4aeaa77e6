"use client";
import { useEffect } from "react";
import { RedrawList, useTogether } from "../_fixes";
import { KeptList } from "../_purpose";
import { Margin } from "../_remarks";
import { strip } from "../_words";
import { useWorkspace } from "../_workspace";
import styles from "./board.module.css";
import { RemarkActs } from "./remark-acts";

/** Wide enough for strip and margin side by side; as in board.module.css. */
const STANDS = "(min-width: 1241px)";

/** The margin: a column where there is room, a drawer where there is not. */
export function MarginColumn({ onHelp }: { readonly onHelp: () => void }) {
  const openMargin = useWorkspace((workspace) => workspace.openMargin);
  useEffect(() => {
    const room = matchMedia(STANDS);
    const follow = () => openMargin(room.matches); // a drawer must not fall over the strip by itself
    follow();
    room.addEventListener("change", follow);
    return () => room.removeEventListener("change", follow);
  }, [openMargin]);
  return (
    <aside id="margin" className={styles.margin} aria-label={strip.margin}>
      <Margin onHelp={onHelp} Acts={RemarkActs} together={useTogether()}>
        <RedrawList />
        <KeptList />
      </Margin>
    </aside>
  );
}
