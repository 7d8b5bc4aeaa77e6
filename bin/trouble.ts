import { withoutControls } from "./on-one-line";

/** Something the person at the command line can mend: one line on stderr, and exit 2. */
export class Trouble extends Error {
  override name = "Trouble";
}

/** Where a command writes. Lines come without their line break. */
export interface Io {
  out(line: string): void;
  err(line: string): void;
}

/** What steers a terminal is written out, wherever a line of text came from. */
export const STANDARD_IO: Io = {
  out: (line) => process.stdout.write(`${withoutControls(line)}\n`),
  err: (line) => process.stderr.write(`${withoutControls(line)}\n`),
};
