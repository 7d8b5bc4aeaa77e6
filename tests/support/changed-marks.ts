import type { JointName, Mark, ViewMarks } from "../../lib/body";
import type { Walk, WalkPanel } from "../../lib/gait";
import type { View } from "../../lib/geometry";

/** The walk with every mark put through a change. */
export function changeMarks(
  judged: Walk,
  change: (mark: Mark, joint: JointName, panel: WalkPanel, view: View) => Mark,
) {
  const panels = judged.panels.map((panel) => {
    const changed = (view: View) =>
      Object.fromEntries(
        Object.entries(panel.marks[view]).map(([joint, mark]) => [
          joint,
          change(mark, joint as JointName, panel, view),
        ]),
      ) as ViewMarks;
    return { ...panel, marks: { side: changed("side"), front: changed("front") } };
  });
  return { ...judged, panels };
}

/** The walk drawn larger or smaller about the middle of its ground line, and so much further along the paper. */
export function redrawn(judged: Walk, scale: number, along: number): Walk {
  return changeMarks(judged, ({ x, y, precision }) => ({
    x: 360 + (x - 360) * scale + along,
    y: 1080 + (y - 1080) * scale,
    precision: precision * scale,
  }));
}

/** The same page seen from behind: what went to its right goes to its left, and the ground with it. */
export function turnedOver(judged: Walk): Walk {
  const turned = changeMarks(judged, (mark, _joint, _panel, view) =>
    view === "front" ? mark : { ...mark, x: 720 - mark.x },
  );
  const panels = turned.panels.map((panel) => ({
    ...panel,
    place: panel.place === null ? null : -panel.place,
  }));
  return { ...turned, panels, advance: -judged.advance };
}
