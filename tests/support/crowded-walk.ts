import type { JointName, Side } from "../../lib/body";
import type { Walk } from "../../lib/gait";
import { lift, type PanelName, push, raise, retime, shift, walk } from "./walk";

const HIPS = ["left-hip", "right-hip"] as const;
const foot = (side: Side) =>
  (["ankle", "heel", "ball", "toe"] as const).map((part): JointName => `${side}-${part}`);

type Fault = (into: Walk) => Walk;

/** What is wrong with one step, at once. */
const wrongIn = (side: Side): readonly Fault[] => {
  const at = (pose: "contact" | "down" | "passing" | "up"): PanelName => `${side} ${pose}`;
  return [
    (into) => raise(into, at("down"), 0.06),
    (into) => raise(into, at("passing"), -0.07),
    (into) => push(into, at("passing"), foot(side), 0.09),
    (into) => push(into, at("passing"), HIPS, -0.2),
    (into) => shift(into, at("passing"), HIPS, side === "left" ? 0.09 : -0.09),
    (into) => lift(into, at("down"), foot(side), 0.05),
    (into) => lift(into, at("up"), foot(side), -0.05),
    (into) => lift(into, at("passing"), [`${side}-ball`, `${side}-toe`], 0.08),
    (into) => lift(into, at("contact"), [`${side}-ball`, `${side}-toe`], -0.1),
    (into) => push(into, at("passing"), [`${side}-knee`], -0.25),
    (into) => push(into, at("contact"), [`${side}-wrist`], 0.3),
  ];
};

/** A walk in which so much is wrong that more than twenty remarks are drawn at once, on both steps. */
export function crowdedWalk(): Walk {
  const faults = [...wrongIn("left"), ...wrongIn("right")];
  const drawn = faults.reduce((into, fault) => fault(into), walk());
  return retime(drawn, "left up", 20);
}
