import type { CheckId } from "./finding";
import { commonOf, type WalkKind, type Yardstick } from "./walk";

/** What a kind of walk asks not to be judged: a check, or a part of one. */
export type QuietTopic =
  | "missing-pose"
  | "missing-pose:up"
  | "pose-order"
  | "hip-order"
  | "hip-order:up"
  | "hip-range"
  | "weight-side"
  | "weight-front"
  | "foot-roll"
  | "clearance"
  | "knee"
  | "snap"
  | "gaps"
  | "gaps:sides"
  | "symmetry"
  | "hitch"
  | "opposition"
  | "tempo"
  | "width"
  | "views"
  | "sides"
  | "lead-in";

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
  sneak: [
    quiet("hip-range", "hip-range", "a sneak keeps its hips as level or as deep as it likes"),
    quiet("foot-roll", "foot-roll", "a sneak puts its feet down toe first"),
    quiet("clearance", "clearance", "a sneak lifts its feet high"),
    quiet("tempo", "tempo", "a sneak takes its time and its own length of step"),
  ],
  child: [
    quiet("foot-roll", "foot-roll", "a small child puts its feet down flat"),
    quiet("opposition", "opposition", "a small child does not swing its arms against its legs"),
    quiet("width", "width", "a small child walks with its feet wide apart"),
  ],
  "double-bounce": [
    quiet(
      "hip-order",
      "hip-order",
      "a double bounce sinks twice a step, so its poses have another order",
    ),
  ],
  march: [
    quiet("clearance", "clearance", "a march lifts its feet high"),
    quiet("tempo", "tempo", "a march has a pace and a length of step of its own"),
  ],
  free: [
    quiet("missing-pose", "missing-pose", "a free walk has the poses it has"),
    quiet("pose-order", "pose-order", "a free walk keeps its own order of poses"),
    quiet("hip-order", "hip-order", "a free walk keeps its own order of heights"),
    quiet("hip-range", "hip-range", "a free walk rises and sinks its own way"),
    quiet("weight-side", "weight-side", "a free walk carries its weight its own way"),
    quiet("weight-front", "weight-front", "a free walk carries its weight its own way"),
    quiet("foot-roll", "foot-roll", "a free walk rolls its feet its own way"),
    quiet("clearance", "clearance", "a free walk lifts its feet its own way"),
    quiet("knee", "knee", "a free walk bends its knees its own way"),
    quiet("snap", "snap", "a free walk bends its knees its own way"),
    quiet("gaps", "gaps", "a free walk keeps its own time"),
    quiet("symmetry", "symmetry", "a free walk has two steps of its own"),
    quiet("hitch", "hitch", "a free walk moves its own way from pose to pose"),
    quiet("opposition", "opposition", "a free walk swings its arms its own way"),
    quiet("tempo", "tempo", "a free walk has its own pace and length of step"),
    quiet("width", "width", "a free walk sets its feet its own way"),
    quiet("views", "views", "a free walk is drawn in each view as it likes"),
    quiet("sides", "sides", "a free walk marks its sides as it likes"),
    quiet("lead-in", "lead-in", "a free walk sets off its own way"),
  ],
};

/** What is not judged in a walk of this kind. */
export function quietedIn(kind: WalkKind, yardstick: Yardstick = "trade"): readonly Quieted[] {
  return NOT_JUDGED[kind].filter(({ topic }) => !isOwnOrder(kind, topic, yardstick));
}

/** Whether a walk of this kind asks for silence on the topic. */
export function isQuiet(
  kind: WalkKind,
  topic: QuietTopic,
  yardstick: Yardstick = "trade",
): boolean {
  return NOT_JUDGED[kind].some(
    (quieted) => quieted.topic === topic && !isOwnOrder(kind, topic, yardstick),
  );
}

/** A double bounce has an order of heights of its own, which its own step can be held against. */
function isOwnOrder(kind: WalkKind, topic: QuietTopic, yardstick: Yardstick): boolean {
  return kind === "double-bounce" && topic === "hip-order" && commonOf(yardstick) !== yardstick;
}

function quiet(check: CheckId, topic: QuietTopic, why: string): Quieted {
  return { check, topic, why };
}
