import { readFile } from "node:fs/promises";
import { extname } from "node:path";
import { embedFonts, FAMILY, missingLetters, sheetSvg } from "../lib/export";
import { reviewWalk } from "../lib/gait";
import { type Sheet, walkOf } from "../lib/sheet";
import { counted } from "./counted";
import { loadSheet } from "./load-sheet";
import { onOneLine } from "./on-one-line";
import { parseOptions } from "./options";
import { shippedFonts } from "./shipped-fonts";
import { type Io, STANDARD_IO, Trouble } from "./trouble";
import { writeWhole } from "./write-whole";

const USAGE = "heelstrip print SHEET.json -o OUT.png|.svg [--width 3840]";

const DEFAULT_WIDTH = 3840; // px: an A3 print at 230 dots an inch
const MIN_WIDTH = 480; // px: below it no text of the sheet can be read
const MAX_WIDTH = 16_384; // px
const MAX_PIXELS = 250_000_000; // 1 GB of picture while it is drawn

/**
 * `heelstrip print`: the annotated sheet as PNG or SVG, by the sheet's own yardstick. The file is
 * written whole or not at all.
 *
 * @returns 0 when nothing shows, 1 when something does; the file is written in both cases
 * Units:   `--width` in pixels; the height follows
 * Errors:  Trouble of one line; nothing is written then
 */
export async function printSheet(
  args: readonly string[],
  io: Io = STANDARD_IO,
  today: Date = new Date(),
): Promise<number> {
  const { file, output, kind, width } = readArguments(args);
  const sheet = await loadSheet(file);
  const review = reviewWalk(walkOf(sheet), sheet.head.yardstick, sheet.onPurpose);
  const date = new Intl.DateTimeFormat("en-GB", { dateStyle: "long" }).format(today);
  const svg = sheetSvg(sheet, review, { width, date });
  if (kind === ".svg") await writeWhole(output, await withFonts(svg));
  else await writeWhole(output, await pngOf(svg, sheet, io));
  const showing = review.remarks.filter(({ level }) => level === "shows").length;
  const panels = counted(sheet.panels.length, "panel");
  io.out(onOneLine(`${output}: ${sheet.head.title}, ${panels}, ${showing} will show`));
  return showing > 0 ? 1 : 0;
}

function readArguments(args: readonly string[]) {
  const { values, positionals } = parseOptions(
    args,
    { output: { type: "string", short: "o" }, width: { type: "string" } },
    USAGE,
  );
  const [file, second] = positionals;
  const { output } = values;
  if (file === undefined) throw new Trouble(`expected a sheet file, got none; usage: ${USAGE}`);
  if (second !== undefined) {
    throw new Trouble(`expected one sheet file, got ${positionals.length}; usage: ${USAGE}`);
  }
  if (output === undefined) throw new Trouble(`expected -o OUT.png or .svg; usage: ${USAGE}`);
  const kind = extname(output).toLowerCase();
  if (kind !== ".png" && kind !== ".svg") {
    throw new Trouble(`expected -o to end in .png or .svg, got "${output}"`);
  }
  return { file, output, kind, width: readWidth(values.width) } as const;
}

function readWidth(asked: string | undefined): number {
  if (asked === undefined) return DEFAULT_WIDTH;
  const width = /^\d+$/.test(asked) ? Number(asked) : Number.NaN;
  if (width >= MIN_WIDTH && width <= MAX_WIDTH) return width;
  throw new Trouble(`expected --width from ${MIN_WIDTH} to ${MAX_WIDTH} pixels, got "${asked}"`);
}

async function withFonts(svg: string): Promise<string> {
  const faces = shippedFonts().map(async ({ weight, file }) => ({
    weight,
    base64: await readFile(file, "base64"),
  }));
  return embedFonts(svg, await Promise.all(faces));
}

async function pngOf(svg: string, { head }: Sheet, io: Io): Promise<Uint8Array> {
  const [, width = "0", height = "0"] = /width="(\d+)" height="(\d+)"/.exec(svg) ?? [];
  if (Number(width) * Number(height) > MAX_PIXELS) {
    throw new Trouble(`${width} × ${height} pixels are too many; expected a smaller --width`);
  }
  const missing = missingLetters(`${head.title}${head.shot}${head.credit}`);
  if (missing.length > 0) {
    io.err(`heelstrip: ${FAMILY} has no ${missing.join(" ")}: this system's fonts stand in`);
  }
  // Loaded here, so that the other commands start without it.
  const { Resvg } = await import("@resvg/resvg-js");
  const picture = new Resvg(svg, {
    font: {
      loadSystemFonts: missing.length > 0,
      fontFiles: shippedFonts().map(({ file }) => file),
      defaultFontFamily: FAMILY,
    },
  });
  return picture.render().asPng();
}
