"use client";
import { memo, useMemo } from "react";
import { useSheet } from "../_room";
import { type LayerProps, useWorkspace } from "../_workspace";
import { MarkBench } from "./mark-bench";
import { MarkDrawing } from "./mark-drawing";
import styles from "./marks.module.css";
import { standFootOf, withFollowing } from "./stand-foot";

/** The joint marks of one paper: shown, and with the mark tool in hand placed and moved. */
export const MarkLayer = memo(function MarkLayer({ panel, view, width, mayDraw }: LayerProps) {
  const marking = useWorkspace((workspace) => workspace.tool === "mark") && mayDraw;
  if (marking) return <MarkBench panel={panel} view={view} width={width} />;
  if (Object.keys(panel.marks[view]).length === 0) return null;
  return <MarksShown panel={panel} view={view} width={width} />;
});

function MarksShown({ panel, view, width }: Omit<LayerProps, "mayDraw">) {
  const foot = useSheet(standFootOf);
  const own = panel.marks[view];
  const marks = useMemo(() => withFollowing(own, view, foot), [own, view, foot]);
  return (
    <div className={styles.layer} aria-hidden="true">
      <MarkDrawing marks={marks} own={own} width={width} />
    </div>
  );
}
