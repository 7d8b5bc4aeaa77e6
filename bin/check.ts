import { type Review, reviewWalk, YARDSTICKS, type Yardstick } from "../lib/gait";
import { type HandedSheet, walkOf } from "../lib/sheet";
import { checkReport } from "./check-report";
import { checkWords } from "./check-words";
import { loadSheet } from "./load-sheet";
import { parseOptions } from "./options";
import { type Io, Trouble } from "./trouble";

const USAGE =
  "heelstrip check FILE... [--yardstick trade|life|this-walk|version] [--against OTHER.json] [--json]";

/** A file that was read and measured. */
export interface Checked {
  readonly file: string;
  readonly sheet: HandedSheet;
  readonly review: Review;
}

/**
 * `heelstrip check`: says what will show. Every file is read before the first is spoken of, so that bad
 * input writes nothing.
 *
 * @returns 0 when nothing shows, 1 when something does
 * Errors: Trouble, a line for each file that cannot be read
 */
export async function checkFiles(args: readonly string[], io: Io): Promise<number> {
  const { values, positionals: files } = parseOptions(
    args,
    {
      yardstick: { type: "string" },
      against: { type: "string" },
      json: { type: "boolean" },
    },
    USAGE,
  );
  if (files.length === 0) throw new Trouble(`expected a sheet file, got none; usage: ${USAGE}`);
  const yardstick = yardstickOf(values.yardstick);
  if ((yardstick === "version") !== (values.against !== undefined)) {
    throw new Trouble("expected --yardstick version and --against OTHER.json together");
  }
  const sheets = await loadAll(files);
  const against =
    values.against === undefined ? {} : { version: walkOf(await loadSheet(values.against)) };
  const checked = sheets.map(({ file, sheet }): Checked => {
    const by = yardstick ?? sheet.head.yardstick;
    const review = reviewWalk(walkOf(sheet), by, sheet.onPurpose, against);
    return { file, sheet, review };
  });
  if (values.json) {
    const reports = checked.map(checkReport);
    io.out(JSON.stringify(reports.length === 1 ? reports[0] : reports, null, 2));
  } else {
    io.out(checked.map(checkWords).join("\n\n"));
  }
  const shows = checked.some(({ review }) => review.remarks.some(({ level }) => level === "shows"));
  return shows ? 1 : 0;
}

function yardstickOf(asked: string | undefined): Yardstick | undefined {
  const found = YARDSTICKS.find((name) => name === asked);
  if (asked !== undefined && found === undefined) {
    throw new Trouble(`expected --yardstick as one of ${YARDSTICKS.join(", ")}, got "${asked}"`);
  }
  return found;
}

/** All the sheets, or a line of trouble for each that is none. */
async function loadAll(files: readonly string[]): Promise<{ file: string; sheet: HandedSheet }[]> {
  const loaded = await Promise.all(
    files.map(async (file) => {
      try {
        return { file, sheet: await loadSheet(file) };
      } catch (error) {
        if (error instanceof Trouble) return error;
        throw error;
      }
    }),
  );
  const troubles = loaded.filter((one) => one instanceof Trouble);
  if (troubles.length > 0) throw new Trouble(troubles.map(({ message }) => message).join("\n"));
  return loaded.flatMap((one) => (one instanceof Trouble ? [] : [one]));
}
