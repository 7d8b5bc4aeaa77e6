"use client";
import { useSheet } from "../_room";
import { charts, common } from "../_words";
import { useWorkspace, useWorkspaceStore } from "../_workspace";
import styles from "./charts.module.css";
import type { HipDot } from "./hip-line";
import { tellHeight } from "./hip-words";
import { useRove } from "./use-rove";

/** The chart's points as buttons: focusing or pressing one takes its panel in hand. */
export function HipButtons({ dots }: { readonly dots: readonly HipDot[] }) {
  const inHand = useWorkspace((workspace) => workspace.panel);
  const rove = useRove(
    dots.map(({ panel }) => ({ key: panel, panel, row: "hips" })),
    inHand,
  );
  return (
    <div className={styles.points} {...rove.group}>
      {dots.map((dot) => (
        <HipButton key={dot.panel} dot={dot} stop={rove.stop(dot.panel)} />
      ))}
    </div>
  );
}

interface HipButtonProps {
  readonly dot: HipDot;
  readonly stop: ReturnType<ReturnType<typeof useRove>["stop"]>;
}

function HipButton({ dot, stop }: HipButtonProps) {
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
      {...stop}
      onFocus={pick}
      onClick={pick}
      onPointerDown={(event) => event.stopPropagation()}
    />
  );
}
