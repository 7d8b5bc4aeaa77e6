import { hundredth, JOINTS, type Mark, markOf, type ViewMarks } from "../../body";
import type { Remark } from "../finding";
import type { FixChange } from "../fix";
import { hipsAlong, ONE_HIP_ALONG } from "../hips-along";
import type { Study } from "../study";
import type { Proposal } from "./proposal";

/**
 * A loop that does not close: the first pose's marks copied onto the last. On the spot they lie where the
 * first has them on the paper; where that brings a slip, and in a walk that travels, they are brought to
 * where the last has its hips.
 */
export function fixLoop(study: Study, { panels }: Remark): readonly Proposal[] {
  const [first, last] = [panels[0], panels.at(-1)].map((id) =>
    study.walk.panels.find((panel) => panel.id === id),
  );
  if (first === undefined || last === undefined || study.leg.kind === "cannot-tell") return [];
  const [was, is] = [first, last].map((panel) => hipsAlong(study, panel, ONE_HIP_ALONG.contact));
  if (was === null || was === undefined || is === null || is === undefined) return [];
  const underHips = (is.x - was.x) * study.leg.value;
  return (study.walk.travel === "travelling" ? [underHips] : [0, underHips]).map((along) => ({
    title: "Copy the first pose onto the last",
    changes: [
      ...copied(last.id, "side", first.marks.side, last.marks.side, along),
      ...copied(last.id, "front", first.marks.front, last.marks.front, 0),
    ],
  }));
}

function copied(
  panel: string,
  view: "side" | "front",
  from: ViewMarks,
  onto: ViewMarks,
  along: number,
): FixChange[] {
  const marks = JOINTS.flatMap((joint) => {
    const [was, is] = [markOf(from, joint), markOf(onto, joint)];
    if (was === null || is === null) return [];
    const to = { x: hundredth(was.x + along), y: was.y };
    return moves(is, to) ? [{ joint, ...to }] : [];
  });
  return marks.length === 0 ? [] : [{ kind: "move-marks", panel, view, marks }];
}

function moves(is: Mark, to: { readonly x: number; readonly y: number }): boolean {
  return is.x !== to.x || is.y !== to.y;
}
