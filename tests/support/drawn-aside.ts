import type { JointName, Mark, ViewMarks } from "../../lib/body";
import { placesOf, type Walk, type WalkPanel } from "../../lib/gait";
import { type PanelName, walk } from "./walk";

export const LEG = 420; // panel units a leg in the built walk

/** The walk with each drawing moved aside on its paper, leg lengths. */
export function drawnAside(from: Walk, aside: (panel: WalkPanel) => number): Walk {
  const moved = (marks: ViewMarks, by: number): ViewMarks =>
    Object.fromEntries(
      Object.entries(marks).map(([joint, mark]: [string, Mark]) => [
        joint,
        { ...mark, x: mark.x + by * LEG },
      ]),
    );
  const panels = from.panels.map((panel) => ({
    ...panel,
    marks: { ...panel.marks, side: moved(panel.marks.side, aside(panel)) },
  }));
  return { ...from, panels };
}

/** How far aside a pose was drawn by somebody who lets no ground go by, leg lengths. */
const ASIDE: Readonly<Record<string, number>> = {
  contact: -0.06,
  down: 0.02,
  passing: 0.1,
  up: 0.03,
};

/** The built walk, each pose drawn somewhere about the middle of its paper. */
export const middled = (): Walk => drawnAside(walk(), ({ pose }) => ASIDE[pose] ?? 0);

/** The same, its places solved from the planted feet. */
export const solved = (from: Walk): Walk => ({ ...from, ground: "solved" });

export const panelOf = (from: Walk, id: PanelName) => {
  const panel = from.panels.find((one) => one.id === id);
  if (panel === undefined) throw new Error(`no panel ${id}`);
  return panel;
};

/** Where a panel stands. */
export const placeIn = (from: Walk, { id }: { id: string }) =>
  placesOf(from)(panelOf(from, id as PanelName));

/** All marks of a foot. */
export const FOOT: readonly JointName[] = ["left-heel", "left-ball", "left-toe", "left-ankle"];
