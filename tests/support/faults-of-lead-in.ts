import type { Side } from "../../lib/body";
import type { Walk } from "../../lib/gait";
import { ledIn, staysIn } from "./led-in";
import { acrossOf, carry, hipsAcross, moveFoot, panelOf } from "./seeded/posed";
import type { Fault } from "./seeding";

/** Where a walk can set off from a stand, and by the foot that stays. */
const setsOff = (into: Walk, side: Side) =>
  into.panels.some(({ pose }) => pose === "stand") && side === staysIn(into);

/** The body of the lead-in so far toward the foot that stays, counted from the stand. */
function shifted(led: Walk, side: Side, legs: number): Walk {
  const toward = side === "right" ? 1 : -1;
  const beside = (name: string) =>
    toward * (hipsAcross(led, name) - acrossOf(led, name, `${side}-ankle`));
  const now = beside("lead-in") - beside("stand");
  return carry(led, "lead-in", { right: toward * (legs - now) });
}

const LIFE = 0.031; // leg lengths that people's hips are toward the standing foot at passing

/** How a walk sets off. */
export const LEAD_IN_FAULTS: readonly Fault[] = [
  {
    name: "foot that creeps before it steps off",
    check: "lead-in",
    level: "may-show",
    panels: ["stand", "lead-in"],
    foot: true,
    fits: setsOff,
    put: (into, side, times) => moveFoot(ledIn(into), "lead-in", side, { ahead: times * 0.04 }),
  },
  {
    name: "foot that slips back before it steps off",
    check: "lead-in",
    level: "may-show",
    panels: ["stand", "lead-in"],
    foot: true,
    fits: setsOff,
    put: (into, side, times) => moveFoot(ledIn(into), "lead-in", side, { ahead: times * -0.02 }),
  },
  {
    name: "body that does not go over the foot that stays",
    check: "lead-in",
    level: "may-show",
    panels: ["stand", "lead-in"],
    fits: setsOff,
    put: (into, side, times) => shifted(ledIn(into), side, LIFE - times * (LIFE - 0.01)),
  },
  {
    name: "lead-in inside the loop",
    check: "lead-in",
    level: "may-show",
    panels: ["first", "again"],
    whole: true,
    fits: setsOff,
    put(into, side, times) {
      const led = ledIn(into);
      if (times < 1) return led;
      const passing = panelOf(led, `${side} passing`);
      const frame = passing.frame + led.exposure;
      const place = passing.place;
      const again = { ...passing, id: "again", pose: "lead-in" as const, frame, place };
      const panels = [...led.panels, again].toSorted((a, b) => a.frame - b.frame);
      return { ...led, panels };
    },
  },
];
