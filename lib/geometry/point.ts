/** A place on a plane. Which plane, and in which unit, is said by whoever holds it. */
export interface Point {
  readonly x: number;
  readonly y: number;
}
