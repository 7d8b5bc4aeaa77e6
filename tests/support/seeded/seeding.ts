import { SIDES, type Side, type ViewMarks } from "../../../lib/body";
import {
  type Against,
  type CheckId,
  type Remark,
  reviewWalk,
  type Walk,
  type Yardstick,
} from "../../../lib/gait";
import { dice } from "../dice";
import { type Fault, isNamed } from "../seeding";
import { CLEAN_WALKS, type CleanWalk } from "./clean-walks";

/** One throw: a fault put on a side of a clean walk that is judged by a yardstick. */
export interface Seeding {
  readonly fault: Fault;
  readonly base: CleanWalk;
  readonly yardstick: Yardstick;
  readonly side: Side;
  readonly seed: number;
  /** ± of every mark, a share of a leg: each is moved at random within it, evenly. 0: exact marks. */
  readonly precision: number;
}

/** What came of a throw at so many times the fault's threshold. */
export interface Outcome {
  readonly walk: Walk;
  /** The remark that names the fault, at its panels and side; null where none does. */
  readonly named: Remark | null;
  /** What was not remarked before, of other checks that the fault does not explain. */
  readonly alarms: readonly Remark[];
}

/** What holds a walk against a step needs no walk that is clean by a rule. */
const BY_A_STEP: readonly Yardstick[] = ["this-walk", "version"];

/** What a seeded walk is held against: a version is the walk as it was before the fault. */
export function againstOf({ base, yardstick }: Pick<Seeding, "base" | "yardstick">): Against {
  if (yardstick !== "version") return NOTHING;
  const known = versions.get(base.walk) ?? { version: base.walk };
  versions.set(base.walk, known);
  return known;
}

const NOTHING: Against = {};
const versions = new WeakMap<Walk, Against>();

/** So many throws, dealt in turn over the walks, sides and yardsticks that the fault can be put on. */
export function seedingsOf(fault: Fault, count: number, precision: number): readonly Seeding[] {
  const places = CLEAN_WALKS.flatMap((base) =>
    fault.foot === true && base.soles === "modelled"
      ? []
      : [...base.yardsticks, ...BY_A_STEP]
          .filter((one) => (fault.yardsticks ?? base.yardsticks).includes(one))
          .flatMap((yardstick) =>
            SIDES.filter((side) => fault.fits?.(base.walk, side) ?? true).map((side) => ({
              fault,
              base,
              yardstick,
              side,
              precision,
            })),
          ),
  );
  // Steps through the places so that a few throws already see most walks.
  return Array.from({ length: count }, (_, nth) => {
    const place = places[(nth * STRIDE) % places.length];
    if (place === undefined) throw new Error(`no walk for ${fault.name}`);
    return { ...place, seed: nth + 1 };
  });
}

const STRIDE = 7; // prime to the number of places, or they would not all be seen

/** Puts the fault, draws the walk with a hand as exact as asked, and reads it. */
export function outcomeOf(seeding: Seeding, times: number): Outcome {
  const { fault, base, yardstick, side } = seeding;
  const walk = byHand(fault.put(base.walk, side, times), seeding);
  const { remarks } = reviewWalk(walk, yardstick, [], againstOf(seeding));
  const before = remarksBefore(seeding);
  const named = remarks.find((remark) => isNamed(fault, remark, side, base.walk)) ?? null;
  const alarms = remarks.filter(
    (remark) =>
      remark.level !== "tidy" &&
      remark.check !== fault.check &&
      !ASKED_OF_THE_WHOLE.has(remark.check) &&
      fault.brings?.[remark.check] === undefined &&
      !before.has(nameOf(remark)),
  );
  return { walk, named, alarms };
}

/**
 * What holds a pose against its like honestly speaks of every fault that is put into one pose alone: it is
 * then unlike its mirrored partner, and the last pose unlike the first; and what looks between the poses, for a
 * body or a foot that one of them has elsewhere throws a knee on its way there and back.
 */
const ASKED_OF_THE_WHOLE: ReadonlySet<CheckId> = new Set(["symmetry", "loop", "snap"]);

/** What is remarked on the walk that the fault is put into, drawn by the same hand. */
export function remarksBefore(seeding: Seeding): ReadonlySet<string> {
  const { base, yardstick, seed, precision } = seeding;
  const key = [base.name, yardstick, seed, precision].join();
  const known = remarksOfClean.get(key);
  if (known !== undefined) return known;
  const { remarks } = reviewWalk(byHand(base.walk, seeding), yardstick, [], againstOf(seeding));
  const names = new Set(remarks.map(nameOf));
  remarksOfClean.set(key, names);
  return names;
}

const remarksOfClean = new Map<string, ReadonlySet<string>>();

/** What two reviews know a remark by. */
export function nameOf({ check, side, panels }: Remark): string {
  return [check, side, panels.at(-1)].join(" ");
}

/**
 * The walk drawn by hand: somewhat larger or smaller, further along the paper, and every mark moved at
 * random within its precision. The same seed moves the same mark of a panel alike, whatever else changed.
 */
export function byHand(from: Walk, { seed, precision }: Pick<Seeding, "seed" | "precision">): Walk {
  const thrown = dice(seed);
  const scale = 0.7 + thrown.below(71) / 100;
  const along = thrown.below(201) - 100;
  const panels = from.panels.map((panel) => {
    const hand = dice(seed * 1009 + codeOf(panel.id));
    const by = () => (hand.below(2001) / 1000 - 1) * precision * LEG;
    const drawn = (marks: ViewMarks): ViewMarks =>
      Object.fromEntries(
        Object.entries(marks).map(([joint, mark]) => [
          joint,
          {
            x: 360 + (mark.x + by() - 360) * scale + along,
            y: 1080 + (mark.y + by() - 1080) * scale,
            precision: Math.max(mark.precision, precision * LEG) * scale,
          },
        ]),
      );
    return { ...panel, marks: { side: drawn(panel.marks.side), front: drawn(panel.marks.front) } };
  });
  return { ...from, panels };
}

const LEG = 420; // panel units, of every clean walk

function codeOf(name: string): number {
  return [...name].reduce((sum, letter) => (sum * 31 + letter.charCodeAt(0)) % 65521, 7);
}
