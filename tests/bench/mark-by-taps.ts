import type { JointName } from "../../lib/body";
import { distance } from "../../lib/geometry";
import { onScreen, readPaper, scaleOf } from "./marked-paper";
import { both, jointOf, LEG, type Marking } from "./marking-hand";

/** Share of a leg: a guess this near is taken, and a tap aims this well. */
const NEAR = 0.015;

/** The side view's quick set. */
export const QUICK: readonly JointName[] = both(["hip", "knee", "heel", "toe"]);

/** Marks every side view by the quick set. Answers how many guesses were taken. */
export async function markByTaps({ page, pen, pace, truth }: Marking): Promise<number> {
  let taken = 0;
  for (let tap = 0; tap < QUICK.length * truth.size; tap += 1) {
    const paper = await readPaper(page);
    const { guess } = paper;
    if (guess === null) throw new Error(`nothing is asked for on frame ${paper.frame}`);
    const target = jointOf(truth, paper, guess.joint);
    pace.look();
    if (distance(guess.at, target) <= NEAR * LEG) {
      pace.key();
      await page.keyboard.press("Enter");
      taken += 1;
    } else {
      const width = 2 * NEAR * LEG * scaleOf(paper);
      const at = pace.landing(onScreen(paper, target), width);
      pace.point(at, width);
      pace.press();
      await pen.tap(at);
    }
  }
  return taken;
}
