import { performance } from "node:perf_hooks";
import { reviewWalk, type Walk, type WalkPanel } from "../../lib/gait";
import { walk } from "../support/walk";

const PANELS = 24;
const ROUNDS = 400;

/** What a review costs on a sheet of 24 panels: read whole, and after one mark moved. */
export async function benchReview(): Promise<{ what: string; figure: string }[]> {
  const steady = longWalk();
  for (let round = 0; round < ROUNDS; round += 1) reviewWalk(fresh(steady), "trade"); // warm up
  const whole = times((round) => {
    const unread = fresh(steady);
    return () => reviewWalk(unread, round % 2 === 0 ? "trade" : "life");
  });
  let current = steady;
  reviewWalk(current, "trade");
  const moved = times((round) => {
    current = withMovedMark(current, round);
    return () => reviewWalk(current, "trade");
  });
  return [
    { what: `review of ${PANELS} panels, none read before (target 5 ms)`, figure: inWords(whole) },
    {
      what: `review of ${PANELS} panels after one mark moved (target 1 ms)`,
      figure: inWords(moved),
    },
  ];
}

/** Milliseconds of every round; what prepares a round is not counted. */
function times(prepare: (round: number) => () => unknown): number[] {
  return Array.from({ length: ROUNDS }, (_, round) => {
    const run = prepare(round);
    const from = performance.now();
    run();
    return performance.now() - from;
  });
}

function inWords(milliseconds: readonly number[]): string {
  const sorted = milliseconds.toSorted((a, b) => a - b);
  const at = (share: number) => sorted[Math.floor(share * (sorted.length - 1))]?.toFixed(3);
  return `p50 ${at(0.5)} ms, p95 ${at(0.95)} ms, worst ${at(1)} ms`;
}

/** The built walk's stride over and over, until the strip has enough panels. */
function longWalk(): Walk {
  const one = walk();
  const [stand, ...stride] = one.panels;
  const panels = stand === undefined ? [] : [stand];
  for (let round = 0; panels.length < PANELS; round += 1) {
    for (const panel of stride.slice(0, 8)) {
      panels.push({ ...panel, id: `${panel.id} ${round}`, frame: panel.frame + 24 * round });
    }
  }
  return { ...one, panels: panels.slice(0, PANELS) };
}

/** The same walk in panels and marks that nobody has read yet. */
function fresh(from: Walk): Walk {
  return { ...from, panels: structuredClone(from.panels) };
}

function withMovedMark(from: Walk, round: number): Walk {
  const at = 1 + (round % (PANELS - 1));
  const panels = from.panels.map((panel, index) => (index === at ? withMovedHip(panel) : panel));
  return { ...from, panels };
}

function withMovedHip(panel: WalkPanel): WalkPanel {
  const hip = panel.marks.side["left-hip"];
  if (hip === undefined) return panel;
  const side = { ...panel.marks.side, "left-hip": { ...hip, y: hip.y + 0.1 } };
  return { ...panel, marks: { ...panel.marks, side } };
}
