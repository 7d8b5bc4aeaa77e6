"use client";
import { useSheet } from "../_room";
import { charts, common } from "../_words";
import { useWorkspaceStore } from "../_workspace";
import styles from "./charts.module.css";
import type { HipDot } from "./hip-line";
import { tellHeight } from "./hip-words";

/** The chart's points as buttons: focusing or pressing one takes its panel in hand. */
export function HipButtons({ dots }: { readonly dots: readonly HipDot[] }) {
  return (
    <div className={styles.points}>
      {dots.map((dot) => (
        <HipButton key={dot.panel} dot={dot} />
      ))}
    </div>
  );
}

function HipButton({ dot }: { readonly dot: HipDot }) {
  const workspace = useWorkspaceStore();
  const pose = useSheet((sheet) => sheet.panels.find(({ id }) => id === dot.panel)?.pose);
  const pick = () => workspace.getState().pickPanel(dot.panel);
  const height = tellHeight({ value: dot.height, plusMinus: dot.plusMinus });
  const name = pose === undefined ? "" : common.pose[pose];
  return (
    <button
      type="button"
      className={styles.point}
      style={{ left: dot.x, top: dot.y }}
      aria-label={charts.point(name, dot.frame, height, dot.remarked)}
      title={`${common.frame(dot.frame)}: ${height}`}
      onFocus={pick}
      onClick={pick}
      onPointerDown={(event) => event.stopPropagation()}
    />
  );
}
