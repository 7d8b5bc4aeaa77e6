import type { CheckId } from "../../lib/gait";
import { CLEAN_WALKS } from "../support/seeded/clean-walks";
import { LEFT_TO_THE_ARTIST } from "../support/seeded/fixing";
import {
  checksOf,
  type FaultRow,
  type FixTally,
  HEARD,
  type Tally,
  TIMES,
} from "../support/seeded/tally";

/** "97 %", of the throws at one size. */
export function shareOf(tally: Pick<Tally, "named" | "throws"> | undefined): string {
  return tally === undefined ? "" : percent(tally.named, tally.throws);
}

function percent(part: number, whole: number): string {
  return whole === 0 ? "–" : `${((100 * part) / whole).toFixed(0)} %`;
}

/** The page that says what each check finds, what it leaves, and what other checks say to it. */
export function detectionPage(rows: readonly FaultRow[], throws: number, date: string): string {
  const walks = CLEAN_WALKS.map(({ name }) => name).join("; ");
  return `# What the checks find

Made by \`npm run soak -- detection\` on ${date}, not by hand. Each fault is put into clean walks (${walks}), on either side, by each
yardstick that it is a fault by, ${throws} seedings at each size: ${TIMES.join(", ")} times what its threshold passes,
counted from what is drawn where it is sound. A seeding is drawn anew each time: larger or smaller, elsewhere on the
paper, and by pencil with every mark moved evenly at random within ± 0.5 % of a leg, which its precision says. Named
is a remark of the check at the right panels and side, of the fault's level or graver. Alarms are seedings, of ${HEARD} at
half and as many at twice by each hand, in which another check says what it did not say before, may show or shows, that the fault does not explain: by
what it changes in the drawing, listed below, and at the panels that it changes, those beside them and the contacts
about them. No check is left out of the count. Captured soles are a model's, good to 3 % of a leg, so faults of a foot are put into the others.

${summary(rows)}

## Each check

${table(
  ["check", "faults", ...SIZES, "alarms", "fix offered", "fix settles"],
  checksOf(rows.map(({ fault }) => fault)).map((check) => checkRow(check, rows)),
)}

## Each fault

*Told up to*: the greatest ± of marks, in percent of a leg, at which twice the threshold is still named in 95 %; where it
is below 0.5 the ± of a pencil leaves that open, and nothing is said of it (†).

${table(["fault", "check", ...SIZES, "alarms", "told up to ±", "fix offered"], rows.map(faultRow))}

## Finer than a pencil

Where less lies between once and twice a threshold than marks by pencil stray, they leave it open, and a check that
spoke all the same would speak of chance. These are held to 95 % by marks as exact as stands beside them.

${rows.flatMap(finerThanPencil).join("\n")}

## What a fault brings with it

What else changes in the drawing, and in how many seedings of a hundred another check says so.

${rows.flatMap(broughtBy).join("\n")}

## No fix

${Object.entries(LEFT_TO_THE_ARTIST)
  .map(([check, reason]) => `- ${check}: ${reason}.`)
  .join("\n")}
`;
}

const SIZES = [
  ...TIMES.map((times) => `exact ${times}×`),
  ...TIMES.map((times) => `pencil ${times}×`),
];

function checkRow(check: CheckId, rows: readonly FaultRow[]): string[] {
  const own = rows.filter(({ fault }) => fault.check === check);
  const sizes = (["exact", "pencil"] as const).flatMap((hand) =>
    TIMES.map((_, nth) => shareOf(summed(own.flatMap((row) => row[hand][nth] ?? [])))),
  );
  const fixes = own.map((row) => row.fixes);
  const [named, offered] = [sum(fixes, "named"), sum(fixes, "offered")];
  const failed = fixes.reduce((all, one) => all + one.failed.length, 0);
  return [
    check,
    `${own.length}`,
    ...sizes,
    alarmsOf(own),
    percent(offered, named),
    percent(offered - failed, offered),
  ];
}

function faultRow(row: FaultRow): string[] {
  const { fault, exact, pencil, toldUpTo, fixes } = row;
  return [
    fault.finest === undefined ? fault.name : `${fault.name} †`,
    fault.check,
    ...[...exact, ...pencil].map((tally) => shareOf(tally)),
    alarmsOf([row]),
    fault.whole === true ? "any" : toldUpTo === null ? "exact" : `${100 * toldUpTo}`,
    percent(fixes.offered, fixes.named),
  ];
}

function alarmsOf(rows: readonly FaultRow[]): string {
  const all = rows.flatMap(({ heard }) => heard);
  return percent(
    all.reduce((total, { alarmed }) => total + alarmed, 0),
    all.reduce((total, { throws }) => total + throws, 0),
  );
}

function summed(tallies: readonly Tally[]) {
  return {
    named: tallies.reduce((total, { named }) => total + named, 0),
    throws: tallies.reduce((total, { throws }) => total + throws, 0),
  };
}

function sum(fixes: readonly FixTally[], of: "named" | "offered"): number {
  return fixes.reduce((total, one) => total + one[of], 0);
}

function finerThanPencil({ fault, finest, pencil }: FaultRow): string[] {
  if (fault.finest === undefined) return [];
  const exact = `± ${100 * fault.finest} % of a leg`;
  const byPencil = shareOf(pencil.at(-1));
  return [
    `- ${fault.name} (${fault.check}): ${exact}, named in ${shareOf(finest)}; by pencil in ${byPencil}.`,
  ];
}

function broughtBy({ fault, heard }: FaultRow): string[] {
  const all = heard.reduce((total, { throws }) => total + throws, 0);
  const brought = Object.entries(fault.brings ?? {}).map(([check, why]) => {
    const times = heard.reduce((total, one) => total + (one.brought[check as CheckId] ?? 0), 0);
    return `${check} (${why}) ${times === 0 ? "never" : atLeastOne(times, all)}`;
  });
  return brought.length === 0 ? [] : [`- ${fault.name}: ${brought.join("; ")}.`];
}

function atLeastOne(part: number, whole: number): string {
  return 100 * part < whole ? "< 1" : ((100 * part) / whole).toFixed(0);
}

/** How many faults, walks and seedings there are, and of how many faults the targets are met. */
function summary(rows: readonly FaultRow[]): string {
  const share = ({ named, throws }: Tally) => named / throws;
  const met = (are: (row: FaultRow) => boolean) => `${rows.filter(are).length} of ${rows.length}`;
  const seedings = rows
    .flatMap(({ exact, pencil }) => [...exact, ...pencil])
    .reduce((total, { throws }) => total + throws, 0);
  const last = (tallies: readonly Tally[]) => tallies.at(-1) ?? NONE;
  const first = (tallies: readonly Tally[]) => tallies[0] ?? NONE;
  const fine = rows.filter(({ fault }) => fault.finest !== undefined).length;
  return `${rows.length} faults of ${checksOf(rows.map(({ fault }) => fault)).length} checks, ${CLEAN_WALKS.length} clean walks, ${seedings} seedings. Named in 95 % or more at twice on exact marks: ${met(({ exact }) => share(last(exact)) >= 0.95)}; by
pencil: ${met(({ pencil }) => share(last(pencil)) >= 0.95)}, and the ${fine} that are finer than a pencil by marks as exact as stands beside them: ${rows.filter(({ fault, finest }) => fault.finest !== undefined && share(finest) >= 0.95).length}. Named in 5 % or less at half on exact
marks: ${met(({ exact }) => share(first(exact)) <= 0.05)}; by pencil: ${met(({ pencil }) => share(first(pencil)) <= 0.05)}. False alarms in ${alarmsOf(rows)} of the seedings that were heard whole.`;
}

const NONE: Tally = { throws: 1, named: 0 };

function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]) => `| ${cells.join(" | ")} |`;
  return [line(head), line(head.map(() => "---")), ...rows.map(line)].join("\n");
}
