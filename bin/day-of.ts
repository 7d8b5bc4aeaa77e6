import { dayWords } from "../lib/export";

/** A day in words, by this machine's clock and zone, whatever its language. */
export function dayOf(date: Date): string {
  return dayWords(date.getFullYear(), date.getMonth() + 1, date.getDate());
}
