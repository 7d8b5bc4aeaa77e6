"use client";
import { memo } from "react";
import { GhostFigure } from "../_paper";
import { type LayerProps, useWorkspace } from "../_workspace";
import { ghostKey } from "./ghosts-of-fix";
import { useFixGhosts } from "./use-fix-ghosts";

/** The figure as the fix that is looked at would leave it, dashed over what is there. */
export const FixLayer = memo(function FixLayer(props: LayerProps) {
  const looking = useWorkspace(({ fixing }) => fixing !== null);
  return looking && props.mayDraw ? <Ghost {...props} /> : null;
});

function Ghost({ panel, view, width }: LayerProps) {
  const { after, moved } = useFixGhosts();
  const figure = after.get(panel.id);
  if (figure === undefined || !moved.has(ghostKey(panel.id, view))) return null;
  return <GhostFigure marks={figure.marks[view]} width={width} look="to-be" />;
}
