const MONTHS = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
] as const;

/**
 * A day as the sheet writes it, whatever machine prints it.
 *
 * Units:   `month` and `day` count from 1
 * Errors:  RangeError for a month that is none
 *
 * @example
 * dayWords(2025, 11, 24); // => "24 November 2025"
 */
export function dayWords(year: number, month: number, day: number): string {
  const name = MONTHS[month - 1];
  if (name === undefined) throw new RangeError(`dayWords needs a month from 1 to 12, got ${month}`);
  return `${day} ${name} ${year}`;
}
