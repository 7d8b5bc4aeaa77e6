import type { Method } from "../method";
import { YARDSTICKS } from "../walk";

/**
 * By how much the marks of both legs together must go less from pose to pose, once left and right are
 * exchanged, for them to be taken as exchanged. Leg lengths a mark, the ways to the panel before and after
 * added up. With the pose's label for it little is asked; without a label, or against it, more.
 * Source: seven captured clips, 31 steps, by the same reckoning: exchanging the sides of any run of poses
 * never saves more than 0.004 of a leg, of a jog 0.06, and no label is for it; from ahead it always costs
 * 0.1 and more
 */
export const SAVED = {
  side: { labelled: 0.02, unlabelled: 0.1, against: 0.2 },
  front: { labelled: 0.05, unlabelled: 0.05, against: 0.05 },
} as const;

export const SIDES_SOURCE =
  "31 steps of seven captured clips: exchanging left and right never saves a way of more than 0.4 % of a leg where people walk, from the side; from ahead it always costs 10 % and more";

export const sidesMethod: Method = {
  check: "sides",
  asks: "Are left and right the same legs from panel to panel?",
  measures:
    "How far the marks of both legs go from each panel to the next, over the ground from the side and about the body's middle from ahead, as they are named and with left and right exchanged. A panel, or a run of them, that would save a way by exchanging is told; the pose's label has a say: the foot that carries is ahead at contact and down, and lower at passing.",
  formula: [
    "way(p, q) = mean over marks of |left p − left q| and |right p − right q|",
    "crossed(p, q) = the same of |left p − right q| and |right p − left q|",
    "saved = Σ (way − crossed) over the run's first and last neighbour",
  ],
  limits: [
    {
      of: "way saved from the side, the label for it",
      yardsticks: YARDSTICKS,
      level: "shows",
      fires: "above",
      value: SAVED.side.labelled,
      unit: "leg",
      source: SIDES_SOURCE,
      tripRate: 0,
    },
    {
      of: "way saved from the side, no label",
      yardsticks: YARDSTICKS,
      level: "shows",
      fires: "above",
      value: SAVED.side.unlabelled,
      unit: "leg",
      source: SIDES_SOURCE,
      tripRate: 0,
    },
    {
      of: "way saved from the side, the label against it",
      yardsticks: YARDSTICKS,
      level: "shows",
      fires: "above",
      value: SAVED.side.against,
      unit: "leg",
      source: SIDES_SOURCE,
      tripRate: 0,
    },
    {
      of: "way saved from ahead",
      yardsticks: YARDSTICKS,
      level: "shows",
      fires: "above",
      value: SAVED.front.labelled,
      unit: "leg",
      source: SIDES_SOURCE,
      tripRate: 0,
    },
  ],
  life: "From the side the legs' marks always go at least as far with left and right exchanged; least of all about the passing, where the legs cross.",
};
