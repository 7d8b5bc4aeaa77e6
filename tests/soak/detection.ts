import { type ChildProcess, fork } from "node:child_process";
import { writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { FAULTS } from "../support/seeded/faults";
import { LEFT_TO_THE_ARTIST } from "../support/seeded/fixing";
import { type FaultRow, type Measured, PENCIL } from "../support/seeded/tally";
import { detectionPage, shareOf } from "./detection-page";

const PAGE = new URL("../../docs/detection.md", import.meta.url);
const ALL = 200; // fewer throws are a look, and the page stays as it is
const HANDS = 2; // processes that measure, each a fault at a time

/**
 * Puts every fault in, at half to twice its threshold, on exact marks and on such as a pencil makes; prints
 * what was named and what was not, and writes `docs/detection.md`. Answers the targets that were missed.
 */
export async function soakDetection(throws: number): Promise<readonly string[]> {
  const waiting = FAULTS.map((_, nth) => nth);
  const rows: FaultRow[] = [];
  const onRow = (nth: number, told: Measured) => {
    const fault = FAULTS[nth];
    if (fault === undefined) throw new Error(`no fault ${nth}`);
    rows[nth] = { fault, ...told };
    const [half, twice] = [told.pencil[0], told.pencil.at(-1)];
    const named = `${shareOf(half)} at half, ${shareOf(twice)} at twice by pencil`;
    console.error(`${nth + 1}/${FAULTS.length} ${fault.check}: ${fault.name}: ${named}`);
    for (const missed of missedBy(rows[nth])) console.error(`  ✗ ${missed}`);
  };
  await Promise.all(Array.from({ length: HANDS }, () => measuredBy({ waiting, throws, onRow })));
  const page = detectionPage(rows, throws, new Date().toISOString().slice(0, 10));
  console.log(page);
  if (throws >= ALL) writeFileSync(PAGE, page);
  return rows.flatMap(missedBy);
}

interface Work {
  /** Places in FAULTS that nobody measures yet; each process takes the next. */
  readonly waiting: number[];
  readonly throws: number;
  readonly onRow: (nth: number, told: Measured) => void;
}

/** One process that measures a fault at a time until none is left, and is ended then. */
function measuredBy({ waiting, throws, onRow }: Work): Promise<void> {
  const worker = fork(fileURLToPath(new URL("./detection-worker.ts", import.meta.url)));
  const next = () => {
    const nth = waiting.shift();
    if (nth === undefined) worker.disconnect();
    else worker.send({ nth, throws });
  };
  worker.on("message", ({ nth, told }: { nth: number; told: Measured }) => {
    onRow(nth, told);
    next();
  });
  next();
  return ended(worker);
}

function ended(worker: ChildProcess): Promise<void> {
  return new Promise((resolve, reject) => {
    worker.on("error", reject);
    worker.on("exit", (code) =>
      code === 0 ? resolve() : reject(new Error(`a fault could not be measured (exit ${code})`)),
    );
  });
}

function missedBy(row: FaultRow): string[] {
  const { fault, exact, pencil, heard, fixes, finest } = row;
  const [half, twice] = [exact[0], exact.at(-1)];
  const byPencil = pencil[0];
  const alarms = heard.flatMap((one) => one.alarms);
  const missed = [
    (twice?.named ?? 0) < 0.95 * (twice?.throws ?? 1) ? "is missed at twice, on exact marks" : null,
    (half?.named ?? 0) > 0.05 * (half?.throws ?? 1) ? "is named at half, on exact marks" : null,
    (byPencil?.named ?? 0) > 0.05 * (byPencil?.throws ?? 1) ? "is named at half, by pencil" : null,
    finest.named < 0.95 * finest.throws
      ? `is missed at twice, by marks of ± ${100 * (fault.finest ?? PENCIL)} %`
      : null,
    alarms.length > 0 ? `brings ${alarms.slice(0, 3).join("; ")}` : null,
    fixes.failed.length > 0 ? `is not mended: ${fixes.failed.slice(0, 3).join("; ")}` : null,
    fixes.offered < (fault.fixed ?? 1) * fixes.named && !(fault.check in LEFT_TO_THE_ARTIST)
      ? `has a fix in ${fixes.offered} of ${fixes.named} seedings only`
      : null,
  ];
  return missed.filter((one) => one !== null).map((one) => `${fault.check}: ${fault.name} ${one}`);
}
