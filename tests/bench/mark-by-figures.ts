import type { JointName } from "../../lib/body";
import { onScreen, readPaper, scaleOf } from "./marked-paper";
import { both, jointOf, LEG, type Marking, offBy } from "./marking-hand";

const OFF = 0.02; // share of a leg: a joint farther off is pulled
const ROUNDS = 3; // a figure is looked over so often before it is left as it is
const HANDLE_PX = 24; // across the target around a mark at the desk

/** Pulled, these would take along what is right already: they are set alone. */
const SET_ALONE: ReadonlySet<JointName> = new Set([
  "left-hip",
  ...both(["ankle", "ball", "knee", "shoulder", "elbow"]),
]);

/**
 * Places a figure on every panel and pulls what is off, in the order told. Answers how many pulls it took.
 */
export async function markByFigures(
  marking: Marking,
  joints: readonly JointName[],
): Promise<number> {
  const { page, pace, truth } = marking;
  let pulls = 0;
  for (let panel = 0; panel < truth.size; panel += 1) {
    pace.look();
    pace.key();
    await page.keyboard.press("f");
    const tried = new Set<JointName>();
    for (let round = 0; round < ROUNDS; round += 1) {
      pace.look(); // the figure is looked over
      const before = pulls;
      for (const joint of joints) pulls += await pullIfOff(marking, joint, tried);
      if (pulls === before) break;
    }
    for (const key of ["Escape", "ArrowRight"]) {
      pace.key(); // off the mark, whose arrows are its own, and on to the next panel
      await page.keyboard.press(key);
    }
  }
  return pulls;
}

/** Pulls a joint that is off to where it was captured; with Alt, alone, where pulling did not bring it there. */
async function pullIfOff(
  { page, pen, pace, truth }: Marking,
  joint: JointName,
  tried: Set<JointName>,
): Promise<0 | 1> {
  const paper = await readPaper(page);
  const off = offBy(truth, paper, joint);
  const mark = paper.marks[joint];
  if (off === null || mark === undefined || off <= OFF) return 0;
  const alone = SET_ALONE.has(joint) || tried.has(joint);
  tried.add(joint);
  const width = 2 * OFF * LEG * scaleOf(paper);
  const from = onScreen(paper, mark);
  const to = pace.landing(onScreen(paper, jointOf(truth, paper, joint)), width);
  pace.look();
  pace.point(from, HANDLE_PX);
  if (alone) pace.key();
  pace.press();
  pace.drag(to, width);
  const way = [1, 2, 3, 4].map((step) => ({
    x: from.x + ((to.x - from.x) * step) / 4,
    y: from.y + ((to.y - from.y) * step) / 4,
  }));
  pen.holdAlt(alone);
  await pen.draw([from, ...way]);
  pen.holdAlt(false);
  return 1;
}
