"use client";
import { memo } from "react";
import { type LayerProps, useWorkspace } from "../_workspace";
import { MarkBench } from "./mark-bench";
import { MarkDrawing } from "./mark-drawing";
import styles from "./marks.module.css";

/** The joint marks of one paper: shown, and with the mark tool in hand placed and moved. */
export const MarkLayer = memo(function MarkLayer({ panel, view, width, mayDraw }: LayerProps) {
  const marking = useWorkspace((workspace) => workspace.tool === "mark") && mayDraw;
  if (marking) return <MarkBench panel={panel} view={view} width={width} />;
  const marks = panel.marks[view];
  if (Object.keys(marks).length === 0) return null;
  return (
    <div className={styles.layer} aria-hidden="true">
      <MarkDrawing marks={marks} width={width} />
    </div>
  );
});
