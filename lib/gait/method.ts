import type { CheckId, Level, Unit } from "./finding";
import type { Yardstick } from "./walk";

/**
 * What a check measures and by which numbers. The check takes its limits from the same constants, and the
 * page that explains the checks is made from this: neither can say what the other does not do.
 */
export interface Method {
  readonly check: CheckId;
  /** The question, as a person asks it: "Does the planted foot stay where it was put down?" */
  readonly asks: string;
  /** Which marks of which poses are read, and what for; one to three sentences. */
  readonly measures: string;
  /** The formula, one line each, in plain characters. Variables are named in the lines. */
  readonly formula: readonly string[];
  readonly limits: readonly MethodLimit[];
  /** What captured walkers do, with figures; null where that was not measured. */
  readonly life: string | null;
}

/** One limit of a check. */
export interface MethodLimit {
  /** What it bounds: "ball, forward, down to passing". */
  readonly of: string;
  /** The yardsticks it holds for. */
  readonly yardsticks: readonly Yardstick[];
  readonly level: Level;
  /** A reading is remarked that lies on this side of the limit by more than its own ±. */
  readonly fires: "above" | "below" | "outside";
  /** The limit; for `outside` the span that passes. */
  readonly value: number | readonly [from: number, to: number];
  readonly unit: Unit;
  /** A paper, a handbook, our own count of captured steps, or "common practice, no source". */
  readonly source: string;
  /** Share of captured steps (pairs, strides) that trip it; null where that was not counted. */
  readonly tripRate: number | null;
}

/** One grade of a limit: how grave it is to be beyond it. A check that has several lists them worst first. */
export interface Grade {
  readonly level: Level;
  /** In the limit's own unit. */
  readonly value: number;
  /** As in `MethodLimit`. */
  readonly tripRate: number | null;
}
