import { otherSide, type Side } from "../../lib/body";
import type { Walk, Yardstick } from "../../lib/gait";
import { stepOf } from "./faults-of-body";
import { swung } from "./faults-of-readings";
import { alongOf, carry, hipsAlong, hipsUp } from "./seeded/posed";
import type { Fault } from "./seeding";

/** The yardsticks that hold a step against another: the walk's own first one, or a version's. */
const BY_A_STEP: readonly Yardstick[] = ["this-walk", "version"];

/** The first step is the one that the walk goes by, so the fault is put into the second. */
const isSecond = (into: Walk, side: Side) =>
  into.panels.find(({ pose }) => pose === "contact")?.weightOn === otherSide(side);

const over = (from: Walk, side: Side, pose: "down" | "passing") =>
  hipsUp(from, `${side} ${pose}`) - hipsUp(from, `${side} contact`);
const ahead = (from: Walk, side: Side) =>
  hipsAlong(from, `${side} passing`) - alongOf(from, `${side} passing`, `${side}-ankle`);
const armsApart = (from: Walk, side: Side) =>
  alongOf(from, `${side} contact`, `${otherSide(side)}-wrist`) -
  alongOf(from, `${side} contact`, `${side}-wrist`);

const MOVES = "a pose that is drawn otherwise moves otherwise between its neighbours";
const DEEP = "a body that sinks deeper rises and sinks by more";

/** Steps that are not like the step that they go by; counted from that step. */
export const PATTERN_FAULTS: readonly Fault[] = [
  {
    name: "down that sinks deeper than the step it goes by",
    check: "hip-order",
    level: "shows",
    panels: ["@ contact", "@ down"],
    yardsticks: BY_A_STEP,
    fits: isSecond,
    fixed: 0, // whether the one step or the other is to be drawn anew, the artist says
    brings: { "hip-range": DEEP, hitch: MOVES, snap: MOVES },
    put(into, side, times) {
      const to = over(into, otherSide(side), "down") - times * 0.029;
      return carry(into, `${side} down`, { up: to - over(into, side, "down") });
    },
  },
  {
    name: "hips that rise and sink more than in the step it goes by",
    check: "hip-range",
    level: "shows",
    panels: ["@ contact", "@ down", "@ passing", "@ up", "next"],
    within: true,
    yardsticks: BY_A_STEP,
    fits: isSecond,
    fixed: 0, // the same
    brings: { "hip-order": DEEP, hitch: MOVES, snap: MOVES },
    put(into, side, times) {
      const heights = (one: Side) => stepOf(into, one).map((name) => hipsUp(into, name));
      const own = heights(otherSide(side));
      const range = Math.max(...own) - Math.min(...own) + times * 0.022;
      const to = Math.max(...heights(side)) - range;
      return carry(into, `${side} down`, { up: to - hipsUp(into, `${side} down`) });
    },
  },
  {
    name: "weight farther ahead than in the step it goes by",
    check: "weight-side",
    level: "shows",
    panels: ["@ passing"],
    yardsticks: BY_A_STEP,
    fits: isSecond,
    fixed: 0, // the same
    brings: { hitch: MOVES, snap: MOVES, reach: "the leg does not reach so far" },
    put(into, side, times) {
      const to = ahead(into, otherSide(side)) + times * 0.03;
      return carry(into, `${side} passing`, { ahead: to - ahead(into, side) });
    },
  },
  {
    name: "arms that swing less than in the step it goes by",
    check: "opposition",
    level: "shows",
    panels: ["@ contact"],
    yardsticks: BY_A_STEP,
    fits: isSecond,
    brings: { hitch: "a wrist that comes forward in one pose alone breaks its arc" },
    put(into, side, times) {
      const to = armsApart(into, otherSide(side)) - times * 0.147;
      return swung(into, `${side} contact`, otherSide(side), to);
    },
  },
];
