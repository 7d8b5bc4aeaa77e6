import type { Side, ViewMarks } from "../../lib/body";
import type { Walk } from "../../lib/gait";

/** The other side's word for each of a side's. */
export function mirrorWord(text: string): string {
  return text.replace(/left|right|Left|Right/g, (word) => MIRRORED[word] ?? word);
}

const MIRRORED: Readonly<Record<string, string>> = {
  left: "right",
  right: "left",
  Left: "Right",
  Right: "Left",
};

/** The walk with left and right exchanged: names of panels, weight and marks, and the front view. */
export function mirroredWalk(walk: Walk): Walk {
  const panels = walk.panels.map((panel) => ({
    ...panel,
    id: mirrorWord(panel.id),
    weightOn: panel.weightOn === null ? null : (mirrorWord(panel.weightOn) as Side),
    marks: { side: renamed(panel.marks.side), front: flipped(renamed(panel.marks.front)) },
  }));
  return { ...walk, panels };
}

/** The same marks under the other side's names. */
function renamed(marks: ViewMarks): ViewMarks {
  return Object.fromEntries(
    Object.entries(marks).map(([joint, mark]) => [mirrorWord(joint), mark]),
  );
}

/** From ahead the walker's left and right lie left and right on the paper. */
function flipped(marks: ViewMarks): ViewMarks {
  return Object.fromEntries(
    Object.entries(marks).map(([joint, mark]) => [joint, { ...mark, x: 720 - mark.x }]),
  );
}
