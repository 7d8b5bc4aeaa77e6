import { readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { inRoot } from "./root.mjs";

const PAGE = "server/app/sheet/[sheetId]/page";

/**
 * The most that the board's own scripts may weigh, kB of 1,000 bytes, gzip. They weigh 188,
 * and this is that and what a small feature takes. What a hand does not need to draw is fetched later: the reader
 * (`app/_room/reader.ts`), the pages over the board, the press. Raising it wants a reason in the commit.
 */
export const BOARD_AT_MOST_KB = 195;

/**
 * What a browser loads for the board that the start page has not asked for: the scripts it goes to fetch at once.
 * Of what the sheet's page fetches on demand the board is the heaviest; what else it may fetch is for shut doors.
 *
 * Units: kB of 1,000 bytes, gzip at its default level
 */
export function boardWeight(built = inRoot(".next")) {
  const manifest = JSON.parse(
    readFileSync(join(built, PAGE, "react-loadable-manifest.json"), "utf8"),
  );
  const weights = Object.values(manifest).map(({ files }) => weightOf(built, files));
  if (weights.length === 0) throw new Error("the build names no scripts of the board");
  return Math.max(...weights);
}

/** What to say of the weight, and whether it passes. */
export function weigh(built) {
  const weight = boardWeight(built);
  const told = `the board's own scripts: ${weight.toFixed(1)} kB gzip, at most ${BOARD_AT_MOST_KB}`;
  return { passes: weight <= BOARD_AT_MOST_KB, told };
}

function weightOf(built, files) {
  const scripts = files.filter((file) => file.endsWith(".js"));
  const bytes = scripts.map((file) => gzipSync(readFileSync(join(built, file))).length);
  return bytes.reduce((sum, size) => sum + size, 0) / 1000;
}
