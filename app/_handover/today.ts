/** The day by this page's clock and zone. Month and day count from 1. */
export interface Day {
  readonly year: number;
  readonly month: number;
  readonly day: number;
}

export function today(now: Date = new Date()): Day {
  return { year: now.getFullYear(), month: now.getMonth() + 1, day: now.getDate() };
}
