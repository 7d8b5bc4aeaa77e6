"use client";
import type { Nib } from "../../lib/ink";
import { Row } from "../_controls";
import { strip } from "../_words";
import { type Tool, useWorkspace } from "../_workspace";

export function ToolRow({ tool, hint }: { readonly tool: Tool; readonly hint: string }) {
  const held = useWorkspace((workspace) => workspace.tool === tool);
  const take = useWorkspace((workspace) => workspace.take);
  return (
    <Row hint={hint} aria-pressed={held} onClick={() => take(tool)}>
      {strip.tray.tools[tool]}
    </Row>
  );
}

/** Whether the rubber takes whole strokes or only what it touches. */
export function RubPartRow() {
  const part = useWorkspace((workspace) => workspace.rubPart);
  const setPart = useWorkspace((workspace) => workspace.setRubPart);
  return (
    <Row tick={part} onClick={() => setPart(!part)}>
      {strip.tray.rubPart}
    </Row>
  );
}

const LINES: Readonly<Record<Nib, { readonly width: number; readonly colour: string }>> = {
  fine: { width: 2, colour: "var(--text)" },
  broad: { width: 4.5, colour: "var(--text)" },
  under: { width: 3.5, colour: "var(--under)" },
};

/** A pencil, shown by a line it draws. */
export function PencilRow({ nib, hint }: { readonly nib: Nib; readonly hint: string }) {
  const held = useWorkspace((workspace) => workspace.tool === "draw" && workspace.nib === nib);
  const takeNib = useWorkspace((workspace) => workspace.takeNib);
  const { width, colour } = LINES[nib];
  return (
    <Row
      hint={hint}
      aria-pressed={held}
      aria-label={strip.tray.nibs[nib]}
      title={strip.tray.nibs[nib]}
      onClick={() => takeNib(nib)}
    >
      <svg viewBox="0 0 110 18" width="110" height="18" aria-hidden="true">
        <path
          d="M4 12 C22 2 38 4 54 9 S88 16 106 6"
          fill="none"
          stroke={colour}
          strokeWidth={width}
          strokeLinecap="round"
        />
      </svg>
    </Row>
  );
}
