import { performance } from "node:perf_hooks";
import { JOINTS, type JointName, type Mark, type ViewMarks } from "../../lib/body";
import { reviewWalk, type Walk, type WalkPanel } from "../../lib/gait";
import { walk } from "../support/walk";

const PANELS = 24;
const ROUNDS = 400;
const FIRST = 100; // edits after the page was opened: the engine still learns what they run through

/** What a review costs on a sheet of 24 panels: read whole, and after one mark moved. */
export async function benchReview(): Promise<{ what: string; figure: string }[]> {
  const steady = longWalk();
  for (let round = 0; round < ROUNDS; round += 1) reviewWalk(fresh(steady), "trade"); // warm up
  const whole = times((round) => {
    const unread = fresh(steady);
    return () => reviewWalk(unread, round % 2 === 0 ? "trade" : "life");
  });
  let current = fresh(steady);
  reviewWalk(current, "trade");
  const move = (round: number) => {
    current = withMovedMark(current, round);
    return () => reviewWalk(current, "trade");
  };
  const first = times(move, FIRST);
  const moved = times(move);
  return [
    { what: `review of ${PANELS} panels, none read before (target 5 ms)`, figure: inWords(whole) },
    { what: `the first ${FIRST} after one mark moved`, figure: inWords(first) },
    {
      what: `review of ${PANELS} panels after one mark moved (target 1 ms)`,
      figure: inWords(moved),
    },
  ];
}

/** Milliseconds of every round; what prepares a round is not counted. */
function times(prepare: (round: number) => () => unknown, rounds = ROUNDS): number[] {
  return Array.from({ length: rounds }, (_, round) => {
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
  return { ...from, panels: from.panels.map((panel) => readAnew(panel, 0)) };
}

function withMovedMark(from: Walk, round: number): Walk {
  const at = 1 + (round % (PANELS - 1));
  const panels = from.panels.map((panel, index) => (index === at ? readAnew(panel, 0.1) : panel));
  return { ...from, panels };
}

/**
 * A panel as the page has it: whether one was drawn or changed, it is read from the document in one way. Of panels
 * that are put together in two ways an engine learns everything twice, so that the first 200 reviews after
 * marks moved took about four times as long as those of panels that are alike.
 */
function readAnew(panel: WalkPanel, lower: number): WalkPanel {
  const { id, frame, pose, weightOn, place, marks } = panel;
  const [side, front] = [marksAnew(marks.side, lower), marksAnew(marks.front, 0)];
  return { id, frame, pose, weightOn, place, marks: { side, front } };
}

function marksAnew(marks: ViewMarks, lower: number): ViewMarks {
  const anew: Partial<Record<JointName, Mark>> = {};
  for (const joint of JOINTS) {
    const mark = marks[joint];
    if (mark === undefined) continue;
    const { x, y, precision } = mark;
    anew[joint] = { x, y: joint === "left-hip" ? y + lower : y, precision };
  }
  return anew;
}
