"use client";
import { memo } from "react";
import { marksAfter } from "../../lib/sheet";
import { GhostFigure } from "../_paper";
import { type LayerProps, useWorkspace } from "../_workspace";
import { usePlan } from "./use-plan";

/** What is about to be passed on to this paper, dashed over what is there. */
export const GhostLayer = memo(function GhostLayer(props: LayerProps) {
  const asked = useWorkspace(({ passOn, panel }) => passOn !== null && panel === props.panel.id);
  return asked && props.mayDraw ? <Ghost {...props} /> : null;
});

function Ghost({ panel, view, width }: LayerProps) {
  const shown = usePlan();
  if (shown === null || shown.plan.kind !== "passing" || shown.plan.to !== panel.id) return null;
  const { marks, ink } = shown.plan;
  const touched = Object.keys(marks[view]).length > 0;
  const strokes = ink.filter((stroke) => stroke.view === view);
  if (!touched && strokes.length === 0) return null;
  const figure = touched ? marksAfter(panel.marks, marks)[view] : null;
  return <GhostFigure marks={figure} ink={strokes} width={width} look="to-be" />;
}
