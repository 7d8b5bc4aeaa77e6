import { z } from "zod";

/** Both ends belong to it. */
export interface Range {
  readonly min: number;
  readonly max: number;
}

/** A message in our own form: what was expected, what came. Put the field's name in front of it. */
export function expecting(what: string): { error: (issue: { input?: unknown }) => string } {
  return { error: ({ input }) => `needs ${what}, got ${shown(input)}` };
}

export function wholeNumber({ min, max }: Range) {
  return z.custom<number>(
    (value) => Number.isInteger(value) && (value as number) >= min && (value as number) <= max,
    expecting(`a whole number in ${min}..${max}`),
  );
}

export function number({ min, max }: Range) {
  return z.custom<number>(
    (value) => typeof value === "number" && value >= min && value <= max,
    expecting(`a number in ${min}..${max}`),
  );
}

/** Text of a length, trimmed, without control characters. */
export function text({ min, max }: Range) {
  return z
    .custom<string>(
      (value) => typeof value === "string" && isPlain(value) && within(value.trim(), min, max),
      expecting(`${min === 0 ? "at most" : `${min} to`} ${max} characters on one line`),
    )
    .transform((value) => value.trim());
}

export function oneOf<const Value extends string | number>(values: readonly Value[]) {
  return z.custom<Value>(
    (value) => values.some((allowed) => allowed === value),
    expecting(`one of ${values.join(", ")}`),
  );
}

/** The first complaint as one line: `framesPerStep.left needs a whole number in 4..240, got 0`. */
export function complaint(error: z.ZodError): string {
  const issue = error.issues[0];
  if (issue === undefined) return "the request does not read";
  const path = issue.path.join(".");
  if (issue.code === "unrecognized_keys") {
    return `${path === "" ? "the request" : path} has no field ${issue.keys.join(", ")}`;
  }
  if (issue.code === "invalid_type" && issue.message.startsWith("Invalid")) {
    return `${path === "" ? "the request" : path} needs ${issue.expected === "object" ? "an object { … }" : issue.expected}`;
  }
  return `${path === "" ? "the request" : path} ${issue.message}`;
}

const LONGEST_SHOWN = 40; // characters of what came that a message repeats

function shown(value: unknown): string {
  if (value === undefined) return "nothing";
  const said = JSON.stringify(value) ?? typeof value;
  return said.length > LONGEST_SHOWN ? `${said.slice(0, LONGEST_SHOWN)}…` : said;
}

function within(value: string, min: number, max: number): boolean {
  return value.length >= min && value.length <= max;
}

function isPlain(value: string): boolean {
  return ![...value].some((character) => {
    const code = character.codePointAt(0) ?? 0;
    return code < 32 || code === 127;
  });
}
