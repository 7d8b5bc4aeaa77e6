/**
 * Guards for callers' mistakes. Messages read: who needs what, got what. They stand in the innermost loops, so
 * names are walked without a list of them being made.
 */

/** Errors: TypeError or RangeError unless every value is a finite number above zero. */
export function requirePositive(who: string, values: Readonly<Record<string, number>>): void {
  for (const name in values) {
    const value = values[name] ?? Number.NaN;
    if (!(Number.isFinite(value) && value > 0)) {
      throw new RangeError(`${who} needs ${name} above 0, got ${value}`);
    }
  }
}

/** Errors: RangeError unless the value is a finite number. */
export function requireFinite(who: string, values: Readonly<Record<string, number>>): void {
  for (const name in values) {
    const value = values[name] ?? Number.NaN;
    if (!Number.isFinite(value)) {
      throw new RangeError(`${who} needs a finite ${name}, got ${value}`);
    }
  }
}
