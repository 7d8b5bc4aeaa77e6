import type { JointName, Side } from "../../lib/body";
import type { Walk } from "../../lib/gait";
import { across, type Fault, hipsAhead } from "./seeding";
import { type PanelName, push, shift } from "./walk";

const HIPS: readonly JointName[] = ["left-hip", "right-hip"];

/** The hips put so far ahead of the standing ankle at passing. */
function ahead(into: Walk, side: Side, legs: number): Walk {
  const name: PanelName = `${side} passing`;
  return push(into, name, HIPS, legs - hipsAhead(into, name, "ankle", side));
}

/** The hips put there across the walk, counted toward the side from a place of the walk's. */
function aside(into: Walk, name: PanelName, side: Side, to: number): Walk {
  return shift(into, name, HIPS, (side === "right" ? to : -to) - across(into, name, "hips"));
}

/** Where something is across the walk, counted toward the side. */
const toward = (from: Walk, name: PanelName, side: Side, what: "hips" | `${Side}-ankle`) =>
  (side === "right" ? 1 : -1) * across(from, name, what);

/** The middle between the feet as they stand, counted toward the side. */
function middle(from: Walk, side: Side): number {
  const other = side === "left" ? "right" : "left";
  const next: PanelName =
    from.panels.findIndex(({ id }) => id === `${side} contact`) <
    from.panels.findIndex(({ id }) => id === `${other} contact`)
      ? `${other} contact`
      : "end";
  const contacts = [`${side} contact` as const, next];
  const others = contacts.map((name) => toward(from, name, side, `${other}-ankle`));
  const mean = others.reduce((sum, z) => sum + z, 0) / others.length;
  return (toward(from, `${side} passing`, side, `${side}-ankle`) + mean) / 2;
}

const LIFE = 0.093; // leg lengths that people's hips are ahead of the standing ankle

/** Weight that is not over the feet, from the side and from the front. */
export const WEIGHT_FAULTS: readonly Fault[] = [
  {
    name: "weight behind at passing",
    check: "weight-side",
    level: "shows",
    panels: ["@ passing"],
    put: (into, side, times) => ahead(into, side, LIFE - times * (LIFE - 0.03)),
  },
  {
    name: "weight too far ahead at passing",
    check: "weight-side",
    level: "shows",
    panels: ["@ passing"],
    put: (into, side, times) => ahead(into, side, LIFE + times * (0.15 - LIFE)),
  },
  {
    name: "weight past the front foot at contact",
    check: "weight-side",
    level: "shows",
    panels: ["@ contact"],
    put: (into, side, times) => {
      const name: PanelName = `${side} contact`;
      const back = -hipsAhead(into, name, "ankle", side); // from the hips to the front ankle
      return push(into, name, HIPS, times * back);
    },
  },
  {
    name: "weight far beside the foot",
    check: "weight-front",
    level: "may-show",
    panels: ["@ passing"],
    put: (into, side, times) => {
      const name: PanelName = `${side} passing`;
      return aside(into, name, side, toward(into, name, side, `${side}-ankle`) + times * 0.08);
    },
  },
  {
    name: "weight on the wrong side",
    check: "weight-front",
    level: "shows",
    panels: ["@ passing"],
    put: (into, side, times) =>
      aside(into, `${side} passing`, side, middle(into, side) - times * 0.02),
  },
  {
    name: "hips that move away from the foot that receives",
    least: 0.9, // twice 1 % leaves 1 %, which is what two hips may stray by pencil
    check: "weight-front",
    level: "may-show",
    panels: ["@ contact", "@ passing"],
    put: (into, side, times) => {
      const at = toward(into, `${side} passing`, side, "hips");
      return aside(into, `${side} contact`, side, at + times * 0.01);
    },
  },
];
