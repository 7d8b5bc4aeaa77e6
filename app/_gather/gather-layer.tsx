"use client";
import { memo } from "react";
import { type LayerProps, useWorkspace } from "../_workspace";
import { GatherBench } from "./gather-bench";

/** Strokes are gathered here while the gather tool is in hand. */
export const GatherLayer = memo(function GatherLayer({ panel, view, width, mayDraw }: LayerProps) {
  const gathering = useWorkspace((workspace) => workspace.tool === "gather") && mayDraw;
  return gathering ? <GatherBench panel={panel} view={view} width={width} /> : null;
});
