import { limbJoint, SIDES } from "../../body";
import { gathered } from "../../gathered";
import { VIEWS, type View } from "../../geometry";
import type { Finding, Remark, Spot } from "../finding";
import { legRows } from "../leg-rows";
import { SIDES_SOURCE } from "../methods/sides";
import { isQuiet } from "../quiet";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";
import { percent } from "../words";
import { cannotTell, NEEDS_A_STEP, sound } from "./answers";
import { exchangedRuns, type Run } from "./exchanged-runs";

/**
 * Are left and right the same legs in every panel? Marks are followed from panel to panel; where they would
 * go a shorter way with left and right exchanged, and the pose's label does not speak against it, they are.
 *
 * Shapes:  a remark for each panel, with a spot for each view; else one answer
 * Units:   leg lengths a mark
 * Errors:  none; without two panels that have both legs marked it answers "cannot-tell"
 * Source:  beside the limits, in `methods/sides`
 */
export function sides(study: Study): readonly Finding[] {
  if (isQuiet(study.walk.kind, "sides")) return [];
  const about = { check: "sides", side: null, panels: [] } as const;
  if (study.leg.kind === "cannot-tell") return [cannotTell(about, study.leg.needs)];
  const seen = VIEWS.map((view) => ({ view, rows: legRows(study, view) }));
  if (seen.every(({ rows }) => rows.length === 0)) {
    const needs = "the knees and feet of both legs marked in two panels";
    return [cannotTell(about, study.steps.length === 0 ? NEEDS_A_STEP : needs)];
  }
  const found = seen.map(({ view, rows }) => ({ view, runs: exchangedRuns(study, view, rows) }));
  const { panels } = study.walk;
  if (found.every(({ runs }) => runs.length === 0)) {
    const read = new Set(gathered(seen, ({ rows }) => rows.map(({ panel }) => panel)));
    return [sound({ ...about, panels: panels.filter((panel) => read.has(panel)) }, null)];
  }
  return gathered(panels, (panel, at) => {
    const here = gathered(found, ({ view, runs }) =>
      runs.filter((run) => run.panels.includes(panel)).map((run) => ({ view, run })),
    );
    return here.length === 0 ? [] : [remark(study, panel, neighbour(study, at), here)];
  });
}

/** The panel that it is seen against: the one before, of the walk's first the one after. */
function neighbour({ walk }: Study, at: number): WalkPanel | null {
  return walk.panels[at - 1] ?? walk.panels[at + 1] ?? null;
}

interface Exchanged {
  readonly view: View;
  readonly run: Run;
}

function remark(
  study: Study,
  panel: WalkPanel,
  against: WalkPanel | null,
  here: readonly Exchanged[],
): Remark {
  const [first] = here;
  if (first === undefined) throw new RangeError("a remark on sides needs a view, got none");
  const { saved, limit } = first.run;
  const shown = against === null ? [panel] : [against, panel];
  const inOrder = shown.toSorted((a, b) => a.frame - b.frame);
  const seen = here.map(({ view }) => (view === "side" ? "from the side" : "from ahead"));
  return {
    kind: "remark",
    check: "sides",
    level: "shows",
    yardstick: study.yardstick,
    side: null,
    panels: inOrder.map(({ id }) => id),
    frames: inOrder.map(({ frame }) => frame),
    spots: gathered(here, ({ view }) => gathered(inOrder, (one) => spotOf(one, view))),
    measured: saved,
    expected: { value: limit, plusMinus: 0, unit: "leg" },
    title: "Left and right change places",
    why: `At frame ${panel.frame} the legs' marks would go ${percent(saved)} of a leg less from pose to pose with left and right exchanged, ${seen.join(" and ")}; over ${percent({ value: limit, plusMinus: 0 })} they are taken for the other leg's. The legs will be seen to swap.`,
    source: SIDES_SOURCE,
    beyond: (saved.value - limit) / limit,
  };
}

/** The pair that shows best which leg is which: feet from the side, hips from ahead, else what is marked. */
function spotOf(panel: WalkPanel, view: View): Spot[] {
  const parts =
    view === "side"
      ? (["ankle", "heel", "knee"] as const)
      : (["hip", "knee", "ankle", "heel"] as const);
  const marked = parts.find((part) =>
    SIDES.every((side) => panel.marks[view][limbJoint(side, part)] !== undefined),
  );
  if (marked === undefined) return [];
  return [{ panel: panel.id, view, joints: SIDES.map((side) => limbJoint(side, marked)) }];
}
