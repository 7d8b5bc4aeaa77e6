import type { Sized } from "../figure/sized";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";
import { type DrawnApart, drawnApart, mirroredApart } from "./drawn-apart";

/** Poses that tell how this walk differs from the published one, and how much each counts. */
export interface Source {
  readonly apart: DrawnApart;
  readonly weight: number;
  /** The pose is this panel's own, of another step: it tells of the free foot as well. */
  readonly samePose: boolean;
}

/**
 * What a panel's marks may be guessed from: the marked poses before and after it, by how near each is in
 * time, and the same pose of the nearest other step, which counts as much as both.
 */
export function sourcesFor(study: Study, panel: WalkPanel, sized: Sized): readonly Source[] {
  const marked = study.walk.panels.filter(
    (one) => one !== panel && one.pose !== "stand" && isMarked(one),
  );
  if (panel.pose === "stand") return [];
  const before = marked.findLast(({ frame }) => frame < panel.frame);
  const after = marked.find(({ frame }) => frame > panel.frame);
  const like = marked
    .filter(({ pose, weightOn }) => pose === panel.pose && weightOn !== null)
    .toSorted((a, b) => Math.abs(a.frame - panel.frame) - Math.abs(b.frame - panel.frame))[0];
  const nearBy = neighbours(panel, before, after).map(([one, weight]) =>
    source(study, one, sized, { weight, panel }),
  );
  const sameOther = like === undefined ? [] : [source(study, like, sized, { weight: 1, panel })];
  return [...nearBy, ...sameOther].filter((one) => one !== null);
}

function neighbours(
  { frame }: WalkPanel,
  before: WalkPanel | undefined,
  after: WalkPanel | undefined,
): (readonly [WalkPanel, number])[] {
  if (before === undefined) return after === undefined ? [] : [[after, 1]];
  if (after === undefined) return [[before, 1]];
  const share = (frame - before.frame) / (after.frame - before.frame);
  return [
    [before, 1 - share],
    [after, share],
  ];
}

function source(
  study: Study,
  one: WalkPanel,
  sized: Sized,
  { weight, panel }: { readonly weight: number; readonly panel: WalkPanel },
): Source | null {
  const apart = drawnApart(study, one, sized);
  if (apart === null) return null;
  const samePose = one.pose === panel.pose;
  // The same pose of the other step has left and right exchanged; a neighbour's joints are its own.
  const turned = samePose && one.weightOn !== panel.weightOn;
  return { apart: turned ? mirroredApart(apart) : apart, weight, samePose };
}

function isMarked({ marks }: WalkPanel): boolean {
  return Object.keys(marks.side).length > 0 || Object.keys(marks.front).length > 0;
}
