import type { Field } from "./field";

/** Errors: RangeError unless the value fits: *who needs what, got what*. */
export function requireField<T>(who: string, what: string, field: Field<T>, value: T): void {
  if (!field.fits(value)) {
    throw new RangeError(`${who} needs ${what} ${field.expected}, got ${JSON.stringify(value)}`);
  }
}
