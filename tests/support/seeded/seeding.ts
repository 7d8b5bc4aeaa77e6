import { SIDES, type Side, type ViewMarks } from "../../../lib/body";
import {
  type Against,
  CHECK_IDS,
  type CheckId,
  type Remark,
  type Walk,
  type WalkPanel,
  type Yardstick,
} from "../../../lib/gait";
import { CHECKS } from "../../../lib/gait/checks";
import { studyWalk } from "../../../lib/gait/study";
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
  /** What other checks say that they did not say before, may show or shows, and the fault explains. */
  readonly brought: readonly Remark[];
  /** And what it does not explain. */
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
  const put = seeded(seeding, times);
  const walk = byHand(put, seeding);
  const remarks = remarksOn(walk, yardstick, againstOf(seeding));
  const named = remarks.find((remark) => isNamed(fault, remark, side, base.walk)) ?? null;
  const others = remarks.filter(
    (remark) =>
      remark.level !== "tidy" &&
      remark.check !== fault.check &&
      !remarksBefore(seeding).has(nameOf(remark)),
  );
  const touched = touchedBy(base.walk, put);
  const [brought, alarms] = [true, false].map((explained) =>
    others.filter(
      ({ check, panels }) =>
        explained === (fault.brings?.[check] !== undefined && panels.some((id) => touched.has(id))),
    ),
  );
  return { walk, named, brought: brought ?? [], alarms: alarms ?? [] };
}

/** Whether the fault's own check names it; no other is asked. */
export function isTold(seeding: Seeding, times: number): boolean {
  const { fault, base, yardstick, side } = seeding;
  const walk = byHand(seeded(seeding, times), seeding);
  return remarksOn(walk, yardstick, againstOf(seeding), [fault.check]).some((remark) =>
    isNamed(fault, remark, side, base.walk),
  );
}

/** The fault put into its walk: the same each time, whoever draws it then. */
function seeded({ fault, base, side }: Seeding, times: number): Walk {
  const known = puts.get(fault) ?? new Map<string, Walk>();
  puts.set(fault, known);
  const key = [base.name, side, times].join();
  const put = known.get(key) ?? fault.put(base.walk, side, times);
  known.set(key, put);
  return put;
}

const puts = new WeakMap<Fault, Map<string, Walk>>();

/** What a review remarks, without all that it measures beside. */
function remarksOn(
  walk: Walk,
  yardstick: Yardstick,
  against: Against,
  asked: readonly CheckId[] = CHECK_IDS,
): readonly Remark[] {
  const study = studyWalk(walk, yardstick, against);
  return CHECKS.filter((_, nth) => asked.includes(CHECK_IDS[nth] as CheckId))
    .flatMap((check) => check(study))
    .filter((finding) => finding.kind === "remark");
}

/**
 * The panels that a fault changed, those beside them on the strip, to which a motion leads (the loop's last pose
 * is beside its first), and the contacts about them, by which lengths and times are told. What is said of none of
 * them the fault cannot explain.
 */
function touchedBy(before: Walk, after: Walk): ReadonlySet<string> {
  const all = before.advance !== after.advance;
  const changed = new Set(
    [
      ...after.panels.filter((panel) => all || !before.panels.includes(panel)),
      ...before.panels.filter((panel) => !after.panels.includes(panel)),
    ].map(({ id }) => id),
  );
  const beside = [before, after].flatMap(({ panels }) => {
    const loop = panels.filter(({ pose }) => pose !== "stand" && pose !== "lead-in");
    return loop.flatMap((panel, nth) => {
      if (!changed.has(panel.id)) return [];
      const about = [loop.at(nth - 1), panel, loop[(nth + 1) % loop.length]];
      const [from, to] = [loop.slice(0, nth).findLast(isContact), loop.slice(nth).find(isContact)];
      return [...about, from, to].filter((one) => one !== undefined);
    });
  });
  return new Set([...changed, ...beside.map(({ id }) => id)]);
}

const isContact = ({ pose }: WalkPanel) => pose === "contact";

/** What is remarked on the walk that the fault is put into, drawn by the same hand. */
export function remarksBefore(seeding: Seeding): ReadonlySet<string> {
  const { base, yardstick, seed, precision } = seeding;
  const key = [base.name, yardstick, seed, precision].join();
  const known = remarksOfClean.get(key);
  if (known !== undefined) return known;
  const remarks = remarksOn(byHand(base.walk, seeding), yardstick, againstOf(seeding));
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
