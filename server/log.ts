import type { Clock } from "./clock";

/** Plain values only: a line is for a machine to sort and a person to read. */
export type LogFields = Readonly<Record<string, string | number | boolean | null>>;

/** One line of JSON for each thing worth knowing. No secret, cookie or name of a person is ever in it. */
export interface Log {
  info(event: string, fields?: LogFields): void;
  warn(event: string, fields?: LogFields): void;
  error(event: string, fields?: LogFields): void;
  /**
   * A warning that the same offender causes again and again: the first one is written at once, the
   * others are counted and written as one line when a minute is over.
   */
  offence(event: string, offender: string, fields?: LogFields): void;
}

const OFFENCES_MS = 60_000;
const OFFENDERS = 1000; // more than that are counted together

export interface LogDeps {
  readonly write: (line: string) => void;
  readonly clock: Clock;
}

export function createLog({ write, clock }: LogDeps): Log {
  const line = (level: string, event: string, fields: LogFields = {}) => {
    const at = new Date(clock.now()).toISOString();
    write(`${JSON.stringify({ at, level, event, ...fields })}\n`);
  };
  const counts = new Map<string, number>();
  const summarise = (event: string, offender: string) => {
    const key = `${event} ${offender}`;
    const more = counts.get(key) ?? 0;
    counts.delete(key);
    if (more > 0) line("warn", event, { offender, more, seconds: OFFENCES_MS / 1000 });
  };
  return {
    info: (event, fields) => line("info", event, fields),
    warn: (event, fields) => line("warn", event, fields),
    error: (event, fields) => line("error", event, fields),
    offence(event, said, fields) {
      const known = counts.has(`${event} ${said}`) || counts.size < OFFENDERS;
      const offender = known ? said : "others";
      const key = `${event} ${offender}`;
      const count = counts.get(key);
      if (count !== undefined) {
        counts.set(key, count + 1);
        return;
      }
      counts.set(key, 0);
      line("warn", event, { offender, ...fields });
      clock.after(OFFENCES_MS, () => summarise(event, offender));
    },
  };
}

/** What an error says of itself, without its stack. */
export function saidBy(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
