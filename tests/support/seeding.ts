import { limbJoint, type Side, type ViewMarks } from "../../lib/body";
import {
  type Level,
  type Remark,
  reviewWalk,
  type Subject,
  type Walk,
  type Yardstick,
} from "../../lib/gait";
import reference from "../reference/captured-strides.json";
import { capturedWalk } from "./captured";
import { dice } from "./dice";
import { type PanelName, walk } from "./walk";

const LEG = 420; // panel units, in every walk here

/** A walk that faults are put into, and how its marks are placed. */
export interface Base {
  readonly name: string;
  readonly walk: Walk;
  /** Share of a leg by which marks are moved at random, no farther than their precision; 0 leaves them. */
  readonly jitter: number;
}

const PENCIL = 0.005; // of a leg, as a figure that was placed

/** Built walks: on ones and twos, on the spot and travelling, even and not, exact and by pencil. */
export const BUILT: readonly Base[] = [
  { name: "a plain walk, exact", walk: walk({ precision: 0 }), jitter: 0 },
  { name: "a plain walk by pencil", walk: walk(), jitter: PENCIL },
  {
    name: "a slow walk on twos",
    walk: walk({ frames: { left: 16, right: 16 }, exposure: 2 }),
    jitter: PENCIL,
  },
  {
    name: "a walk of unlike steps",
    walk: walk({ frames: { left: 12, right: 13 } }),
    jitter: PENCIL,
  },
  { name: "a travelling walk", walk: travelling(walk()), jitter: PENCIL },
];

/** The captured strides, whose hips and ankles are exact. */
export const CAPTURED: readonly Base[] = reference.walks.map((captured) => ({
  name: `captured walk ${captured.clip}`,
  walk: named(capturedWalk(captured)),
  jitter: 0,
}));

/** The same walk over the ground, every panel in its own place. */
export function travelling(base: Walk): Walk {
  const panels = base.panels.map((panel) => ({
    ...panel,
    place: (panel.frame - 1) * base.advance,
  }));
  return { ...base, panels, travel: "travelling", advance: 0 };
}

/** The captured stride's panels by the names of the built walk's. */
function named(captured: Walk): Walk {
  const last = captured.panels.at(-1);
  const panels = captured.panels.map((panel) => ({
    ...panel,
    id: panel === last ? "end" : `${panel.weightOn} ${panel.pose}`,
  }));
  return { ...captured, panels };
}

/** Every mark moved at random within its precision. */
export function jittered(base: Walk, share: number, seed: number): Walk {
  if (share === 0) return base;
  const thrown = dice(seed);
  const by = () => (thrown.below(2001) / 1000 - 1) * share * LEG;
  const shaken = (marks: ViewMarks): ViewMarks =>
    Object.fromEntries(
      Object.entries(marks).map(([joint, mark]) => [
        joint,
        { ...mark, x: mark.x + by(), y: mark.y + by() },
      ]),
    );
  const panels = base.panels.map((panel) => ({
    ...panel,
    marks: { side: shaken(panel.marks.side), front: shaken(panel.marks.front) },
  }));
  return { ...base, panels };
}

/** A fault put into one step, `times` as far from what is drawn as its threshold is. */
export interface Fault {
  readonly name: string;
  readonly check: Remark["check"];
  readonly level: Level;
  /** What of the drawing the remark must be about, where its check asks about more than one thing. */
  readonly subject?: Subject;
  /** Panels the remark must name; `@` stands for the side, `~` for the other, `next` for the contact that ends the step, `first` and `second` for the walk's contacts. */
  readonly panels: readonly string[];
  /** The remark must end with those panels, and may begin with others. */
  readonly onlyLast?: boolean;
  /** The remark must be told within those panels; which of them, the hand decides. */
  readonly within?: boolean;
  /** The side that the remark must name, where it is not the one the fault was put on. */
  readonly sideOf?: (side: Side) => Side | null;
  readonly put: (into: Walk, side: Side, times: number) => Walk;
  /** Yardsticks it is a fault by; trade and life unless said. */
  readonly yardsticks?: readonly Yardstick[];
  /** Whether it can be put there at all; anywhere unless said. */
  readonly fits?: (into: Walk, side: Side) => boolean;
  /** There is no half of it: below 1 it is not put. */
  readonly whole?: boolean;
  /** It is read from a sole, so it hides where soles are a model's, good to 3 % of a leg. */
  readonly foot?: boolean;
  /** Checks that speak of it too and are right to, each with the reason. */
  readonly brings?: Readonly<Partial<Record<Remark["check"], string>>>;
  /** Share of seedings in which a fix is to be offered, where that is not all; 0 is left to the artist. */
  readonly fixed?: number;
  /** ± of marks, a share of a leg, at which twice its threshold can be told, where a pencil's 0.5 % is too rough. */
  readonly finest?: number;
  /** Share of seedings in which it is to be named, where that is not 0.95. */
  readonly least?: number;
}

const THROWS = 20;

/** Of the seedings of a fault at so many times its threshold, the share in which it is named rightly. */
export function namedShare(fault: Fault, base: Base, yardstick: Yardstick, times: number): number {
  const seeds = Array.from({ length: base.jitter === 0 ? 1 : THROWS }, (_, seed) => seed + 1);
  const tries = seeds.flatMap((seed) =>
    (["left", "right"] as const).map((side) => {
      const put = fault.put(base.walk, side, times);
      return reviewWalk(jittered(put, base.jitter, seed), yardstick).remarks.some((remark) =>
        isNamed(fault, remark, side, base.walk),
      );
    }),
  );
  return tries.filter((named) => named).length / tries.length;
}

/** Whether a remark is the one that a fault on this side is to draw. */
export function isNamed(fault: Fault, remark: Remark, side: Side, from: Walk): boolean {
  const other = side === "left" ? "right" : "left";
  const contacts = from.panels.filter(({ pose }) => pose === "contact").map(({ id }) => id);
  const next = contacts[contacts.indexOf(`${side} contact`) + 1] ?? "end";
  const [first = "", second = ""] = contacts;
  const named: Readonly<Record<string, string>> = { next, first, second };
  const asked = fault.panels.map(
    (panel) => named[panel] ?? panel.replace("@", side).replace("~", other),
  );
  const told = fault.onlyLast === true ? remark.panels.slice(-asked.length) : remark.panels;
  const about = fault.sideOf === undefined ? side : fault.sideOf(side);
  return (
    remark.check === fault.check &&
    (fault.subject === undefined || remark.subject === fault.subject) &&
    GRAVITY[remark.level] >= GRAVITY[fault.level] &&
    (fault.within === true
      ? told.every((panel) => asked.includes(panel))
      : told.toSorted().join() === asked.toSorted().join()) &&
    remark.side === about
  );
}

const GRAVITY: Readonly<Record<Level, number>> = { tidy: 0, "may-show": 1, shows: 2 };

/** How far the middle of the hips is ahead of a joint, leg lengths. */
export function hipsAhead(
  from: Walk,
  name: PanelName,
  joint: "ankle" | "heel",
  side: Side,
): number {
  const marks = from.panels.find(({ id }) => id === name)?.marks.side;
  const [left, right, mark] = [
    marks?.["left-hip"],
    marks?.["right-hip"],
    marks?.[limbJoint(side, joint)],
  ];
  if (left === undefined || right === undefined || mark === undefined)
    throw new Error(`no hips or ${joint} on ${name}`);
  return ((left.x + right.x) / 2 - mark.x) / LEG;
}

/** Where the middle of the hips is across the walk, leg lengths to the walker's right; or a mark. */
export function across(from: Walk, name: PanelName, joint: "hips" | `${Side}-ankle`): number {
  const marks = from.panels.find(({ id }) => id === name)?.marks.front;
  const names = joint === "hips" ? (["left-hip", "right-hip"] as const) : ([joint] as const);
  const xs = names.map((one) => marks?.[one]?.x ?? Number.NaN);
  return (360 - xs.reduce((sum, x) => sum + x, 0) / xs.length) / LEG;
}
