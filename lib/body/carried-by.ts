import { type JointName, SIDES, type Side } from "./joint";

/**
 * What carries a joint, nearest first: where nothing is known of the joint itself, it goes with that.
 * Knees and the load's bearer are not told by others: a knee lies between two that move apart.
 */
const CARRIED_BY: Readonly<Record<string, readonly string[]>> = {
  head: ["neck", "shoulder", "hip"],
  neck: ["shoulder", "head", "hip"],
  load: ["shoulder", "neck", "hip"],
  shoulder: ["other shoulder", "neck", "hip"],
  elbow: ["shoulder", "neck", "hip"],
  wrist: ["elbow", "shoulder", "neck", "hip"],
  hip: ["other hip"],
  knee: [],
  ankle: ["heel", "toe", "ball"],
  heel: ["ankle", "ball", "toe"],
  ball: ["toe", "heel", "ankle"],
  toe: ["ball", "ankle", "heel"],
};

/**
 * The joints that tell where a joint goes, nearest first: itself, then what carries it. Those that stand
 * side by side tell together.
 *
 * @example
 * carriersOf("left-elbow"); // => [["left-elbow"], ["left-shoulder"], ["neck"], ["left-hip"]]
 * carriersOf("head")[2]; // => ["left-shoulder", "right-shoulder"]
 */
export function carriersOf(joint: JointName): readonly (readonly JointName[])[] {
  const side = SIDES.find((one) => joint.startsWith(`${one}-`)) ?? null;
  const part = side === null ? joint : joint.slice(side.length + 1);
  return [[joint], ...(CARRIED_BY[part] ?? []).map((one) => namesOf(one, side))];
}

function namesOf(part: string, side: Side | null): JointName[] {
  if (part === "head" || part === "neck" || part === "load") return [part];
  const other = part.startsWith("other ");
  const name = other ? part.slice("other ".length) : part;
  return SIDES.filter((one) => side === null || (one === side) !== other).map(
    (one) => `${one}-${name}` as JointName,
  );
}
