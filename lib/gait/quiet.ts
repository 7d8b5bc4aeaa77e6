import type { CheckId } from "./finding";
import type { WalkKind } from "./walk";

/** What a kind of walk asks not to be judged: a check, or a part of one. */
export type QuietTopic =
  | "missing-pose"
  | "missing-pose:up"
  | "pose-order"
  | "hip-order"
  | "hip-order:up"
  | "weight-side"
  | "weight-front"
  | "foot-roll"
  | "gaps"
  | "gaps:sides"
  | "symmetry";

/** Said once for a walk: what is not judged, and why not. */
export interface Quieted {
  readonly check: CheckId;
  readonly topic: QuietTopic;
  readonly why: string;
}

const NOT_JUDGED: Readonly<Record<WalkKind, readonly Quieted[]>> = {
  plain: [],
  heavy: [
    quiet("missing-pose", "missing-pose:up", "a heavy walk need not have an up"),
    quiet("hip-order", "hip-order:up", "a heavy walk need not rise to its up"),
    quiet("weight-side", "weight-side", "a load is carried ahead of the feet or behind them"),
  ],
  limp: [
    quiet("gaps", "gaps:sides", "a limp takes its two steps in different times"),
    quiet("symmetry", "symmetry", "a limp leans to one side"),
  ],
  sneak: [quiet("foot-roll", "foot-roll", "a sneak puts its feet down toe first")],
  child: [quiet("foot-roll", "foot-roll", "a small child puts its feet down flat")],
  "double-bounce": [
    quiet(
      "hip-order",
      "hip-order",
      "a double bounce sinks twice a step, so its poses have another order",
    ),
  ],
  march: [],
  free: [
    quiet("missing-pose", "missing-pose", "a free walk has the poses it has"),
    quiet("pose-order", "pose-order", "a free walk keeps its own order of poses"),
    quiet("hip-order", "hip-order", "a free walk keeps its own order of heights"),
    quiet("weight-side", "weight-side", "a free walk carries its weight its own way"),
    quiet("weight-front", "weight-front", "a free walk carries its weight its own way"),
    quiet("foot-roll", "foot-roll", "a free walk rolls its feet its own way"),
    quiet("gaps", "gaps", "a free walk keeps its own time"),
    quiet("symmetry", "symmetry", "a free walk carries its shoulders its own way"),
  ],
};

/** What is not judged in a walk of this kind. */
export function quietedIn(kind: WalkKind): readonly Quieted[] {
  return NOT_JUDGED[kind];
}

/** Whether a walk of this kind asks for silence on the topic. */
export function isQuiet(kind: WalkKind, topic: QuietTopic): boolean {
  return NOT_JUDGED[kind].some((quieted) => quieted.topic === topic);
}

function quiet(check: CheckId, topic: QuietTopic, why: string): Quieted {
  return { check, topic, why };
}
