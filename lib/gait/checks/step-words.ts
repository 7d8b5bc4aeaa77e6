import { otherSide, type Side } from "../../body";
import type { WalkPanel } from "../walk";
import { sided } from "../words";

/** "the left step", or "the step" while nobody said whose. */
export function whoseStep(side: Side | null): string {
  return `the ${sided(side, "step")}`;
}

/** What a step needs to be whole: "the right foot's contact after frame 13". */
export function nextContact(side: Side | null, contact: WalkPanel): string {
  const foot = side === null ? "other foot" : `${otherSide(side)} foot`;
  return `the ${foot}'s contact after frame ${contact.frame}`;
}
