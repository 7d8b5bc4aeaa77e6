import { JOINTS, type JointName, otherSide, SIDES, type Side } from "../body";
import { gathered } from "../gathered";
import { inBetweens, type Motion, type MotionKey, type MotionSpan, type Planted } from "../motion";
import { stepFrames } from "./expected-frames";
import { footState } from "./foot-state";
import { frontMark } from "./front-mark";
import { placeOf } from "./ground-mark";
import { REAR_LEAVES } from "./rear-leaves";
import { walkingPanels } from "./step";
import type { Study } from "./study";
import type { WalkPanel } from "./walk";

/** A walk as motion, and the panels that its poses are. */
export interface WalkMotion {
  readonly motion: Motion;
  /** The panel of each of the motion's poses. */
  readonly panelOf: ReadonlyMap<MotionKey, WalkPanel>;
  /** What lies between two panels; undefined where another lies between them, or either is none of its poses. */
  spanOf(from: WalkPanel, to: WalkPanel): MotionSpan | undefined;
}

const known = new WeakMap<Study, WalkMotion>();

/**
 * The walk between its panels, without stand and lead-in: feet stand from their contact until 0.24 of the
 * next step, or until a panel has them in the air. Where a stride's end repeats its beginning it is looped.
 *
 * Units:   frames, leg lengths over the ground
 * Errors:  none; panels without a place on the ground are not among its poses
 */
export function walkMotion(study: Study): WalkMotion {
  const before = known.get(study);
  if (before !== undefined) return before;
  const told = worked(study);
  known.set(study, told);
  return told;
}

function worked(study: Study): WalkMotion {
  const stands = plantedIn(study);
  const panels = walkingPanels(study.walk.panels).filter((panel) =>
    Number.isFinite(placeOf(panel, study.walk)),
  );
  const keys = panels.map((panel) => keyOf(study, panel, stands));
  const panelOf = new Map(keys.map((key, at) => [key, panels[at] as WalkPanel]));
  const motion = inBetweens(keys, { loop: closes(panels) });
  const spanFrom = new Map(motion.spans.map((span) => [panelOf.get(span.from), span]));
  return {
    motion,
    panelOf,
    spanOf(from, to) {
      const span = spanFrom.get(from);
      return span !== undefined && panelOf.get(span.to) === to ? span : undefined;
    },
  };
}

/** Whether the last panel is the contact that the first is. */
export function closes(panels: readonly WalkPanel[]): boolean {
  const [first, last] = [panels[0], panels.at(-1)];
  if (first === undefined || last === undefined || first === last) return false;
  const contacts = panels.filter(({ pose }) => pose === "contact");
  const whole = contacts.length > 2 && contacts.length % 2 === 1;
  const same = first.pose === "contact" && last.pose === "contact";
  return whole && same && first.weightOn !== null && first.weightOn === last.weightOn;
}

interface Stand extends Planted {
  readonly side: Side;
}

/** When each foot stands, by the steps. */
function plantedIn({ steps }: Study): readonly Stand[] {
  return gathered(steps, (step, at): Stand[] => {
    const { weightOn: side, contact, next } = step;
    const frames = stepFrames(step);
    if (side === null || frames === null) return [];
    const own = steps[at + 1];
    const after = own === undefined ? null : stepFrames(own);
    const to = contact.frame + frames + REAR_LEAVES.at * (after ?? frames);
    const rear = { side: otherSide(side), to: contact.frame + REAR_LEAVES.at * frames };
    const stands: Stand[] = [{ side, from: contact.frame, to }];
    // The first step's rear foot was put down a step before, the last contact's carries on.
    if (at === 0) stands.unshift({ ...rear, from: contact.frame - frames });
    if (next !== null && own === undefined) {
      stands.push({
        side: otherSide(side),
        from: next.frame,
        to: next.frame + (1 + REAR_LEAVES.at) * frames,
      });
    }
    return stands;
  });
}

interface Made {
  readonly key: MotionKey;
  readonly leg: number;
  readonly place: number;
  readonly stand: unknown;
}

/** A panel's pose, for as long as somebody holds the panel and nothing that it hangs on has changed. */
const made = new WeakMap<WalkPanel, Made>();

function keyOf(study: Study, panel: WalkPanel, stands: readonly Stand[]): MotionKey {
  const planted = {
    left: standOf(study, panel, "left", stands),
    right: standOf(study, panel, "right", stands),
  };
  const leg = study.leg.kind === "value" ? study.leg.value : 0;
  const place = placeOf(panel, study.walk);
  const stand = study.walk.panels.find(({ pose }) => pose === "stand")?.marks.side ?? null;
  const before = made.get(panel);
  const same = before?.leg === leg && before.place === place && before.stand === stand;
  if (before !== undefined && same && SIDES.every((side) => alike(before.key, planted, side))) {
    return before.key;
  }
  const side: Partial<Record<JointName, { x: number; y: number }>> = {};
  const front: Partial<Record<JointName, { z: number; y: number }>> = {};
  for (const joint of JOINTS) {
    const seen = study.ground(panel, joint);
    const ahead = frontMark(panel, joint, study.leg);
    if (seen !== null) side[joint] = { x: seen.x, y: seen.y };
    if (ahead !== null) front[joint] = { z: ahead.z, y: ahead.y };
  }
  const key = { frame: panel.frame, until: panel.frame, side, front, planted };
  made.set(panel, { key, leg, place, stand });
  return key;
}

function alike({ planted }: MotionKey, now: MotionKey["planted"], side: Side): boolean {
  return planted[side]?.from === now[side]?.from && planted[side]?.to === now[side]?.to;
}

function standOf(
  study: Study,
  panel: WalkPanel,
  side: Side,
  stands: readonly Stand[],
): Planted | null {
  const { frame } = panel;
  const stand = stands.find((one) => one.side === side && one.from <= frame && frame < one.to);
  if (stand === undefined) return null;
  const foot = footState(study, panel, side);
  const isUp = foot.kind === "value" && foot.state === "air";
  return isUp ? null : { from: stand.from, to: stand.to };
}
