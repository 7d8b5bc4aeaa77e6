import type { Reading, Unit } from "./finding";

/** No reading could be made; `needs` says what is missing, as a phrase after "needs". */
export interface NoReading {
  readonly kind: "cannot-tell";
  readonly needs: string;
}

/** A reading that could be made, with its ±. */
export interface Value extends Reading {
  readonly kind: "value";
}

/** What a reading answers: a value with its unit and ±, or what it still needs. */
export type Answer = Value | NoReading;

/** A value; one that is not finite is not a value, so it answers what it `needs` instead. */
export function answerOf(value: number, plusMinus: number, unit: Unit, needs: string): Answer {
  return Number.isFinite(value) && Number.isFinite(plusMinus)
    ? { kind: "value", value, plusMinus, unit }
    : { kind: "cannot-tell", needs };
}
