import { type LimbJoint, limbJoint } from "../body";
import { rootSumSquare, type View } from "../geometry";
import { frontMark } from "./front-mark";
import { placeOf } from "./ground-mark";
import { walkingPanels } from "./step";
import type { Study } from "./study";
import type { WalkPanel } from "./walk";

interface Place {
  /** Along the walk from the side, over the ground; across it from ahead, from the middle of the body. */
  readonly along: number;
  readonly y: number;
  readonly plusMinus: number;
}

/** The joints of a panel that are marked on both sides, in one view. Leg lengths. */
export interface LegRow {
  readonly panel: WalkPanel;
  /** Seen from the side, so over the ground. */
  readonly beside: boolean;
  readonly pairs: ReadonlyMap<LimbJoint, readonly [left: Place, right: Place]>;
}

/** From the side hips lie on each other; from ahead feet may cross, so they count only without hips. */
const JOINTS: Readonly<Record<View, readonly (readonly LimbJoint[])[]>> = {
  side: [["knee", "ankle", "heel", "ball", "toe"]],
  front: [
    ["hip", "knee"],
    ["ankle", "heel", "ball", "toe"],
  ],
};
const ARMS: readonly LimbJoint[] = ["elbow", "wrist"];

/** The legs of a walk's panels, one row each; panels that have no pair marked have none. */
export function legRows(study: Study, view: View): readonly LegRow[] {
  // On the spot nothing tells where over the ground a stand is, so it is only seen from ahead.
  const panels = view === "side" ? walkingPanels(study.walk.panels) : study.walk.panels;
  for (const joints of JOINTS[view]) {
    const all =
      view === "side"
        ? panels.map((panel) => study.once(panel, legsBeside, joints, placeOf(panel, study.walk)))
        : study.inPanels(legsAhead, joints);
    const rows = all.filter((row) => row !== null);
    if (rows.length > 1) return rows;
  }
  return [];
}

function legsBeside(study: Study, panel: WalkPanel, joints: readonly LimbJoint[], _place: number) {
  return rowOf(study, panel, "side", joints);
}

function legsAhead(study: Study, panel: WalkPanel, joints: readonly LimbJoint[]) {
  return rowOf(study, panel, "front", joints);
}

/** The same of the arms. */
export function armRows(study: Study, view: View): readonly LegRow[] {
  const rows = study.walk.panels.map((panel) => rowOf(study, panel, view, ARMS));
  return rows.filter((row) => row !== null);
}

function rowOf(
  study: Study,
  panel: WalkPanel,
  view: View,
  joints: readonly LimbJoint[],
): LegRow | null {
  const pairs = new Map<LimbJoint, readonly [Place, Place]>();
  for (const joint of joints) {
    const left = placed(study, panel, view, limbJoint("left", joint));
    const right = placed(study, panel, view, limbJoint("right", joint));
    if (left !== null && right !== null) pairs.set(joint, [left, right]);
  }
  if (pairs.size === 0) return null;
  const beside = view === "side";
  return { panel, beside, pairs: beside ? pairs : aboutMiddle(pairs) };
}

function placed(
  study: Study,
  panel: WalkPanel,
  view: View,
  joint: ReturnType<typeof limbJoint>,
): Place | null {
  if (view === "side") {
    const mark = study.ground(panel, joint);
    return mark === null ? null : { along: mark.x, y: mark.y, plusMinus: mark.plusMinus };
  }
  const mark = frontMark(panel, joint, study.leg);
  return mark === null ? null : { along: mark.z, y: mark.y, plusMinus: mark.plusMinus };
}

function aboutMiddle(pairs: LegRow["pairs"]): LegRow["pairs"] {
  let sum = 0;
  for (const [left, right] of pairs.values()) sum = sum + left.along + right.along;
  const middle = sum / (2 * pairs.size);
  const moved = (place: Place): Place => ({ ...place, along: place.along - middle });
  const about = new Map<LimbJoint, readonly [Place, Place]>();
  for (const [joint, [left, right]] of pairs) about.set(joint, [moved(left), moved(right)]);
  return about;
}

/** From one row to the next: what exchanging the sides of one of them would add to the marks' ways. */
export interface Link {
  /** Leg lengths a mark; below 0 the ways are shorter with left and right exchanged. */
  readonly costs: number;
  readonly plusMinus: number;
}

const UNLINKED: Link = { costs: 0, plusMinus: 0 };

/** The links between rows, one fewer than there are rows. */
export function linksOf(study: Study, rows: readonly LegRow[]): Link[] {
  return rows.slice(1).map((row, before) => {
    const was = rows[before];
    return was === undefined ? UNLINKED : linkBetween(study, was, row);
  });
}

/** The link to a row from the one before it, for as long as somebody holds the row. */
const known = new WeakMap<
  LegRow,
  { readonly was: LegRow; readonly apart: number; readonly link: Link }
>();

function linkBetween(study: Study, was: LegRow, row: LegRow): Link {
  const apart = was.beside && row.beside ? study.placesWithin(was.panel, row.panel) : 0;
  const before = known.get(row);
  if (before?.was === was && Object.is(before.apart, apart)) return before.link;
  const link = linkOf(was, row, apart);
  known.set(row, { was, apart, link });
  return link;
}

function linkOf(from: LegRow, to: LegRow, apart: number): Link {
  let [costs, marks, square] = [0, 0, 0];
  for (const [joint, [left, right]] of from.pairs) {
    const after = to.pairs.get(joint);
    if (after === undefined) continue;
    const crossed = way(left, after[1]) + way(right, after[0]);
    costs += crossed - way(left, after[0]) - way(right, after[1]);
    marks += 2;
    // A mark that moves changes both of its ways, so at most by twice as much.
    for (const { plusMinus } of [left, right, ...after]) square += 4 * plusMinus ** 2;
  }
  if (marks === 0) return UNLINKED;
  // All marks of a panel are as far off as it is, each in both of its ways.
  const plusMinus = rootSumSquare(Math.sqrt(square) / marks, 2 * apart);
  return { costs: costs / marks, plusMinus };
}

function way(from: Place, to: Place): number {
  return rootSumSquare(to.along - from.along, to.y - from.y);
}
