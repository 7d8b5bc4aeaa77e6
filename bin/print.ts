import { layOutPages, measureShipped, pageSvg } from "../lib/export";
import { reviewWalk } from "../lib/gait";
import { walkOf } from "../lib/sheet";
import { counted } from "./counted";
import { dayOf } from "./day-of";
import { loadSheet } from "./load-sheet";
import { onOneLine } from "./on-one-line";
import { pagePath } from "./page-path";
import { pngPress } from "./png-press";
import { readPrintArguments } from "./print-arguments";
import { type Io, STANDARD_IO } from "./trouble";
import { withFonts } from "./with-fonts";
import { writeWhole } from "./write-whole";

/**
 * `heelstrip print`: the annotated sheet as PNG or SVG, by the sheet's own yardstick. Where it takes
 * several pages each is a file of its own, numbered. A file is written whole or not at all.
 *
 * @returns 0 when nothing shows, 1 when something does; the files are written in both cases
 * Units:   `--width` in pixels; the height follows
 * Errors:  Trouble of one line; nothing is written of a page that cannot be drawn
 */
export async function printSheet(
  args: readonly string[],
  io: Io = STANDARD_IO,
  today: Date = new Date(),
): Promise<number> {
  const { file, output, kind, width, page } = readPrintArguments(args);
  const sheet = await loadSheet(file);
  const review = reviewWalk(walkOf(sheet), sheet.head.yardstick, sheet.onPurpose);
  const wish = { sheet, review, date: dayOf(today), measure: measureShipped, page };
  const layouts = layOutPages(wish);
  const press = kind === ".png" ? await pngPress(sheet, width, io) : withFonts;
  const paths: string[] = [];
  for (const layout of layouts) {
    const path = pagePath(output, layout.number, layout.count);
    await writeWhole(path, await press(pageSvg(layout, wish)));
    paths.push(path);
  }
  const showing = review.remarks.filter(({ level }) => level === "shows").length;
  const panels = counted(sheet.panels.length, "panel");
  io.out(onOneLine(`${paths.join(", ")}: ${sheet.head.title}, ${panels}, ${showing} will show`));
  return showing > 0 ? 1 : 0;
}
