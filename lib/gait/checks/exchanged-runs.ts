import { limbJoint, otherSide, type Side } from "../../body";
import { gathered } from "../../gathered";
import { rootSumSquare, type View } from "../../geometry";
import { clearlyBeyond, greatestFirst } from "../beyond";
import type { Reading } from "../finding";
import { type LegRow, type Link, linksOf } from "../leg-rows";
import { SAVED } from "../methods/sides";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";

/** Rows whose left and right are exchanged against their neighbours, and what exchanging them saves. */
export interface Run {
  readonly panels: readonly WalkPanel[];
  readonly saved: Reading;
  readonly limit: number;
}

interface Stretch {
  readonly from: number;
  readonly to: number;
}

/**
 * The runs of panels whose sides are exchanged in one view, the clearest first taken out. A run is what lies
 * between two links that are shorter crossed, or between one and an end of the strip.
 *
 * @param rows the legs as that view shows them
 */
export function exchangedRuns(study: Study, view: View, rows: readonly LegRow[]): readonly Run[] {
  let links: readonly Link[] = linksOf(study, rows);
  const runs: Run[] = [];
  // Each time round at least one panel is put right, so this ends.
  while (runs.length < rows.length) {
    const [found] = gathered(stretches(links, rows.length), (stretch) =>
      judged(study, view, rows, links, stretch),
    ).toSorted(clearest);
    if (found === undefined) return runs;
    runs.push(found.run);
    const { from, to } = found.stretch;
    links = links.map((link, at) =>
      at === from - 1 || at === to ? { ...link, costs: -link.costs } : link,
    );
  }
  return runs;
}

function stretches(links: readonly Link[], count: number): Stretch[] {
  const crossed = gathered(links, ({ costs }, at) => (costs < 0 ? [at] : []));
  if (crossed.length === 0) return [];
  const starts = [0, ...crossed.map((at) => at + 1)];
  return starts.map((from, nth) => ({ from, to: crossed[nth] ?? count - 1 }));
}

interface Judged {
  readonly run: Run;
  readonly stretch: Stretch;
  readonly votes: number;
}

function judged(
  study: Study,
  view: View,
  rows: readonly LegRow[],
  links: readonly Link[],
  stretch: Stretch,
): Judged[] {
  const ends = [links[stretch.from - 1], links[stretch.to]].filter((link) => link !== undefined);
  const saved: Reading = {
    value: ends.reduce((sum, { costs }) => sum - costs, 0),
    plusMinus: rootSumSquare(...ends.map(({ plusMinus }) => plusMinus)),
    unit: "leg",
  };
  const panels = rows.slice(stretch.from, stretch.to + 1).map(({ panel }) => panel);
  const votes = panels.reduce((sum, panel) => sum + study.once(panel, vote), 0);
  const asked = votes > 0 ? "labelled" : votes < 0 ? "against" : "unlabelled";
  const limit = SAVED[view][view === "side" ? asked : "unlabelled"];
  if (!clearlyBeyond(saved.value, saved.plusMinus, limit)) return [];
  return [{ run: { panels, saved, limit }, stretch, votes }];
}

/** What saves most, of two halves the one that labels speak against, then the shorter. */
function clearest(a: Judged, b: Judged): number {
  return (
    greatestFirst(a.run.saved.value, b.run.saved.value) ||
    b.votes - a.votes ||
    a.run.panels.length - b.run.panels.length
  );
}

/**
 * Whether a pose's label is for exchanging its sides, from the side: 1 for it, −1 against, 0 undecided. The
 * foot that lands is ahead, and the foot that carries is lower while the other swings.
 */
function vote(study: Study, panel: WalkPanel): number {
  const { weightOn, pose } = panel;
  if (weightOn === null) return 0;
  const ahead = pose === "contact" || pose === "down";
  if (!ahead && pose !== "passing" && pose !== "up") return 0;
  const bears = footOf(study, panel, weightOn);
  const other = footOf(study, panel, otherSide(weightOn));
  if (bears === null || other === null) return 0;
  const by = ahead ? bears.x - other.x : other.y - bears.y;
  const plusMinus = rootSumSquare(bears.plusMinus, other.plusMinus);
  return clearlyBeyond(Math.abs(by), plusMinus, 0) ? -Math.sign(by) : 0;
}

/** Where a foot is, by the marks that it and the other have; the mean of heel and toe where there is no ankle. */
function footOf(study: Study, panel: WalkPanel, side: Side) {
  for (const parts of [["ankle"], ["heel", "toe"], ["heel"]] as const) {
    const marks = parts.map((part) => study.seen(panel, limbJoint(side, part)));
    const known = marks.filter((mark) => mark !== null);
    if (known.length < marks.length) continue;
    const mean = (of: (mark: (typeof known)[number]) => number) =>
      known.reduce((sum, mark) => sum + of(mark), 0) / known.length;
    return { x: mean(({ x }) => x), y: mean(({ y }) => y), plusMinus: mean((m) => m.plusMinus) };
  }
  return null;
}
