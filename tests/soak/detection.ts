import { writeFileSync } from "node:fs";
import { FAULTS } from "../support/seeded/faults";
import { LEFT_TO_THE_ARTIST } from "../support/seeded/fixing";
import { type FaultRow, measuredRow } from "../support/seeded/tally";
import { detectionPage, shareOf } from "./detection-page";

const PAGE = new URL("../../docs/detection.md", import.meta.url);
const ALL = 200; // fewer throws are a look, and the page stays as it is

/**
 * Puts every fault in, at half to twice its threshold, on exact marks and on such as a pencil makes; prints
 * what was named and what was not, and writes `docs/detection.md`. Answers the targets that were missed.
 */
export function soakDetection(throws: number): readonly string[] {
  const rows = FAULTS.map((fault, nth) => {
    const row = measuredRow(fault, throws);
    const [half, , , twice] = row.pencil;
    const named = `${shareOf(half)} at half, ${shareOf(twice)} at twice by pencil`;
    console.error(`${nth + 1}/${FAULTS.length} ${fault.check}: ${fault.name}: ${named}`);
    return row;
  });
  const page = detectionPage(rows, throws);
  console.log(page);
  if (throws >= ALL) writeFileSync(PAGE, page);
  return rows.flatMap(missedBy);
}

function missedBy(row: FaultRow): string[] {
  const { fault, exact, pencil, fixes, finest } = row;
  const [half, , , twice] = exact;
  const [byPencil] = pencil;
  const missed = [
    (twice?.named ?? 0) < 0.95 * (twice?.throws ?? 1) ? "is missed at twice, on exact marks" : null,
    (half?.named ?? 0) > 0.05 * (half?.throws ?? 1) ? "is named at half, on exact marks" : null,
    (byPencil?.named ?? 0) > 0.05 * (byPencil?.throws ?? 1) ? "is named at half, by pencil" : null,
    finest.named < 0.95 * finest.throws ? "is missed at twice, by pencil" : null,
    [...exact, ...pencil].some(({ alarmed }) => alarmed > 0)
      ? `brings ${[...exact, ...pencil]
          .flatMap(({ alarms }) => alarms)
          .slice(0, 3)
          .join("; ")}`
      : null,
    fixes.failed.length > 0 ? `is not mended: ${fixes.failed.slice(0, 3).join("; ")}` : null,
    fixes.offered < (fault.fixed ?? 1) * fixes.named && !(fault.check in LEFT_TO_THE_ARTIST)
      ? `has a fix in ${fixes.offered} of ${fixes.named} seedings only`
      : null,
  ];
  return missed.filter((one) => one !== null).map((one) => `${fault.check}: ${fault.name} ${one}`);
}
