import { otherSide, type Side, sideToGround } from "../../body";
import { placeOf } from "../ground-mark";
import { stanceOf } from "../stance";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";
import { printOn } from "./print-on";
import type { Sized } from "./sized";

/** Where the carrying foot of a panel was put down, and how far apart the feet are. */
export interface FootGround {
  /** Where its heel lies when it is flat, leg lengths along the ground; null where nothing tells. */
  readonly print: number | null;
  /** Leg lengths to the other foot's print; null where nothing tells. */
  readonly stepLength: number | null;
  /** What told: the foot on another panel, the other foot a step away, or nothing. */
  readonly placedBy: "footprint" | "step" | "middle";
}

/**
 * Where a panel's carrying foot is on the ground, as the other panels have it: by its own footprint, else
 * a step from the one before, else a step from the one after.
 *
 * Units:   leg lengths along the ground
 */
export function footGround(study: Study, panel: WalkPanel, sized: Sized): FootGround {
  const stances = stancesOf(study);
  const at = stances.findIndex(({ starts }) => starts.includes(panel));
  const [before, own, after] = [stances[at - 1], stances[at], stances[at + 1]];
  if (own === undefined) {
    const [first, second] = stances;
    const length = first === undefined || second === undefined ? null : apart(first, second);
    return { print: null, stepLength: length, placedBy: "middle" };
  }
  const back = before === undefined ? null : apart(before, own);
  const ahead = after === undefined ? null : apart(own, after);
  const print = (stance: Stance | undefined) =>
    stance === undefined ? null : printIn(study, stance, panel, sized);
  const [was, is, next] = [print(before), print(own), print(after)];
  if (is !== null) {
    const drawn = was !== null && was < is && isLanding(panel) ? is - was : null;
    return { print: is, stepLength: drawn ?? wished(panel, back, ahead), placedBy: "footprint" };
  }
  const stepLength = wished(panel, back, ahead);
  if (was !== null && back !== null) return { print: was + back, stepLength, placedBy: "step" };
  if (next !== null && ahead !== null) return { print: next - ahead, stepLength, placedBy: "step" };
  return { print: null, stepLength, placedBy: "middle" };
}

/** The step that shows in a pose: behind it as it lands, ahead of it as the other foot swings. */
function wished(panel: WalkPanel, back: number | null, ahead: number | null): number | null {
  return isLanding(panel) ? (back ?? ahead) : (ahead ?? back);
}

function isLanding({ pose }: WalkPanel): boolean {
  return pose === "contact" || pose === "down";
}

/** One foot on the ground, from its contact until it leaves. */
interface Stance {
  readonly side: Side | null;
  /** Ground x of the contact's panel, leg lengths. */
  readonly place: number;
  /** The panels whose weight it carries. */
  readonly starts: readonly WalkPanel[];
  /** The panels on which it stands. */
  readonly stands: readonly WalkPanel[];
}

function stancesOf({ steps, walk }: Study): Stance[] {
  const stances = steps.map((step, nth): Stance => {
    const side = step.weightOn;
    const leaving = [step.next, steps[nth + 1]?.down ?? null].filter((panel) => panel !== null);
    const planted = (panel: WalkPanel) => side !== null && stanceOf(steps, panel, side) === step;
    const stands = [...step.panels, ...leaving].filter(planted);
    return { side, place: placeOf(step.contact, walk), starts: step.panels, stands };
  });
  const last = steps.at(-1);
  if (last?.next == null) return stances;
  const side = last.weightOn === null ? null : otherSide(last.weightOn);
  const closing = { side, place: placeOf(last.next, walk), starts: [last.next] };
  return [...stances, { ...closing, stands: [last.next] }];
}

/** How far the ground goes by between two contacts; null unless it goes forward. */
function apart(from: Stance, to: Stance): number | null {
  const length = to.place - from.place;
  return length > 0 ? length : null;
}

/** A stance's footprint by the panel that is nearest in time, this one left out. */
function printIn(
  study: Study,
  { side, stands }: Stance,
  { id, frame }: WalkPanel,
  sized: Sized,
): number | null {
  if (side === null) return null;
  const near = stands
    .filter((one) => one.id !== id)
    .toSorted((a, b) => Math.abs(a.frame - frame) - Math.abs(b.frame - frame));
  for (const one of near) {
    const print = printOn(one.marks.side, one, side, sized);
    const place = placeOf(one, study.walk);
    if (print !== null && Number.isFinite(place)) {
      return sideToGround({ x: print, y: 0 }, { place, legLength: sized.legUnits }).x;
    }
  }
  return null;
}
