/** Guards for callers' mistakes. Messages read: who needs what, got what. */

/** Errors: TypeError or RangeError unless every value is a finite number above zero. */
export function requirePositive(who: string, values: Readonly<Record<string, number>>): void {
  for (const [name, value] of Object.entries(values)) {
    if (!(Number.isFinite(value) && value > 0)) {
      throw new RangeError(`${who} needs ${name} above 0, got ${value}`);
    }
  }
}

/** Errors: RangeError unless the value is a finite number. */
export function requireFinite(who: string, values: Readonly<Record<string, number>>): void {
  for (const [name, value] of Object.entries(values)) {
    if (!Number.isFinite(value))
      throw new RangeError(`${who} needs a finite ${name}, got ${value}`);
  }
}
