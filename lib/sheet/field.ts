/**
 * What one value of a sheet may be. The document's reader falls back where a field does not fit; the
 * file's reader refuses, and says what was expected. So both know the same limits.
 */
export interface Field<T> {
  /** Fits after "expected". */
  readonly expected: string;
  readonly fits: (value: unknown) => value is T;
}

/** A whole number of this span, ends included. */
export function whole(from: number, to: number): Field<number> {
  return {
    expected: `a whole number ${from} to ${to}`,
    fits: (value): value is number =>
      Number.isInteger(value) && isWithin(value as number, from, to),
  };
}

/** A finite number of this span, ends included. */
export function within(from: number, to: number): Field<number> {
  return {
    expected: `a number ${from} to ${to}`,
    fits: (value): value is number => typeof value === "number" && isWithin(value, from, to),
  };
}

/** A finite number above the first and up to the second. */
export function above(from: number, to: number): Field<number> {
  return {
    expected: `a number above ${from}, up to ${to}`,
    fits: (value): value is number =>
      typeof value === "number" && value > from && isWithin(value, from, to),
  };
}

export function text(longest: number): Field<string> {
  return {
    expected: `text of up to ${longest} characters`,
    // As people count, and JSON Schema does: by code points.
    fits: (value): value is string =>
      typeof value === "string" && (value.length <= longest || [...value].length <= longest),
  };
}

export function oneOf<const T extends string | number | boolean>(values: readonly T[]): Field<T> {
  return {
    expected: values.map((value) => JSON.stringify(value)).join(" or "),
    fits: (value): value is T => (values as readonly unknown[]).includes(value),
  };
}

export function orNull<T>(field: Field<T>): Field<T | null> {
  return {
    expected: `${field.expected}, or null`,
    fits: (value): value is T | null => value === null || field.fits(value),
  };
}

/** An object of exactly these fields. */
export function record<T extends object>(fields: { [K in keyof T]: Field<T[K]> }): Field<T> {
  const names = Object.keys(fields) as (keyof T & string)[];
  return {
    expected: `{ ${names.map((name) => `${name}: ${fields[name].expected}`).join("; ")} }`,
    fits: (value): value is T =>
      isRecord(value) &&
      Object.keys(value).length === names.length &&
      names.every((name) => name in value && fields[name].fits(value[name])),
  };
}

export function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/** False for NaN. */
function isWithin(value: number, from: number, to: number): boolean {
  return value >= from && value <= to;
}
