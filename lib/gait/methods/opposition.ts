import type { Method } from "../method";
import { NEIGHBOURS, patternLimits } from "./neighbouring-steps";

/**
 * How far a hand must be ahead of the other before an arm counts as swung, leg lengths.
 * Source: the poses of seven captured clips, 32 contacts: hands at least 9 % of a leg apart, in plain walks
 * 16 %. Nearer than half of that the arms hang; where the line lies is our own choice.
 */
export const ARM_AHEAD = 0.05;

const SOURCE =
  "317 captured steps by 15 people: at contact the hand ahead is never on the side of the foot ahead; what counts as ahead is our own choice";

export const oppositionMethod: Method = {
  check: "opposition",
  asks: "Do the arms swing against the legs?",
  measures:
    "At each contact, from the side: the wrist on the side of the front foot, held against the other wrist. The front foot is told by ankles or heels, and by the panel's label where they are not marked.",
  formula: [
    "ahead = x of the wrist on the front foot's side − x of the other wrist",
    "x runs the way the walker goes, in leg lengths",
  ],
  limits: [
    {
      of: "the wrist on the front foot's side, ahead of the other, at contact",
      yardsticks: ["trade", "life"],
      level: "may-show",
      fires: "above",
      value: ARM_AHEAD,
      unit: "leg",
      source: SOURCE,
      tripRate: 0,
    },
    ...patternLimits("the rear foot's hand ahead of the other, at contact", NEIGHBOURS.arms),
  ],
  life: "In 317 captured steps the hand ahead is always on the side of the rear foot; in plain walks the hands are 16 to 51 % of a leg apart.",
};

export const OPPOSITION_SOURCE = SOURCE;
