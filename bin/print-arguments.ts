import { extname } from "node:path";
import { ONE_PAGE, PAPER_NAMES, type PageChoice } from "../lib/export";
import { parseOptions } from "./options";
import { Trouble } from "./trouble";

const USAGE =
  "heelstrip print SHEET.json -o OUT.png|.svg [--page a4|a3|letter|tabloid] [--portrait] [--width 3840]";

const DEFAULT_WIDTH = 3840; // px: an A3 print at 230 dots an inch
const MIN_WIDTH = 480; // px: below it no text of the sheet can be read
const MAX_WIDTH = 16_384; // px

/** What `print` was asked for. */
export interface PrintArguments {
  readonly file: string;
  readonly output: string;
  readonly kind: ".png" | ".svg";
  /** Pixels. */
  readonly width: number;
  readonly page: PageChoice;
}

/** Reads the arguments of `print`. Errors: Trouble of one line, naming what was expected and what came. */
export function readPrintArguments(args: readonly string[]): PrintArguments {
  const { values, positionals } = parseOptions(
    args,
    {
      output: { type: "string", short: "o" },
      width: { type: "string" },
      page: { type: "string" },
      portrait: { type: "boolean" },
    },
    USAGE,
  );
  const [file, second] = positionals;
  if (file === undefined) throw new Trouble(`expected a sheet file, got none; usage: ${USAGE}`);
  if (second !== undefined) {
    throw new Trouble(`expected one sheet file, got ${positionals.length}; usage: ${USAGE}`);
  }
  const { output } = values;
  if (output === undefined) throw new Trouble(`expected -o OUT.png or .svg; usage: ${USAGE}`);
  const kind = extname(output).toLowerCase();
  if (kind !== ".png" && kind !== ".svg") {
    throw new Trouble(`expected -o to end in .png or .svg, got "${output}"`);
  }
  const width = readWidth(values.width, kind);
  return { file, output, kind, width, page: readPage(values.page, values.portrait ?? false) };
}

function readWidth(asked: string | undefined, kind: PrintArguments["kind"]): number {
  if (asked === undefined) return DEFAULT_WIDTH;
  if (kind === ".svg") {
    throw new Trouble("expected --width with a .png only: an .svg is sharp at any size");
  }
  const width = /^\d+$/.test(asked) ? Number(asked) : Number.NaN;
  if (width >= MIN_WIDTH && width <= MAX_WIDTH) return width;
  throw new Trouble(`expected --width from ${MIN_WIDTH} to ${MAX_WIDTH} pixels, got "${asked}"`);
}

function readPage(asked: string | undefined, portrait: boolean): PageChoice {
  if (asked === undefined) {
    if (portrait) throw new Trouble("expected --page with --portrait, got none");
    return ONE_PAGE;
  }
  const paper = PAPER_NAMES.find((name) => name === asked.toLowerCase());
  if (paper === undefined) {
    throw new Trouble(`expected --page ${PAPER_NAMES.join(", ")}, got "${asked}"`);
  }
  return { paper, orientation: portrait ? "portrait" : "landscape" };
}
