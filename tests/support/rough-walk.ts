import fc from "fast-check";
import type { JointName, Side } from "../../lib/body";
import { lift, type PanelName, push, raise, retime, shift, walk, withPanel } from "./walk";

const POSES = ["contact", "down", "passing", "up"] as const;
const SIDES = ["left", "right"] as const;
export const NAMES = SIDES.flatMap((side) => POSES.map((pose): PanelName => `${side} ${pose}`));

/** Things done to a pose, each in thousandths of a leg, frames or which label. */
const roughness = fc.record({
  hips: fc.integer({ min: -60, max: 60 }),
  foot: fc.integer({ min: -90, max: 90 }),
  body: fc.integer({ min: -150, max: 150 }),
  sway: fc.integer({ min: -60, max: 60 }),
  lifted: fc.integer({ min: -50, max: 50 }),
  toe: fc.integer({ min: -80, max: 80 }),
  shoulder: fc.integer({ min: -40, max: 40 }),
  frames: fc.integer({ min: -1, max: 1 }),
  label: fc.integer({ min: 0, max: 11 }),
});

const HIPS: readonly JointName[] = ["left-hip", "right-hip"];
const FOOT_PARTS = ["ankle", "heel", "ball", "toe"] as const;

/** A walk with something done to every pose: its weight, its foot, its stem, and now and then its label. */
export const roughWalk = fc
  .array(roughness, { minLength: NAMES.length, maxLength: NAMES.length })
  .map((changes) =>
    changes.reduce((changed, done, index) => {
      const name = NAMES[index] ?? "end";
      const side: Side = name.startsWith("left") ? "left" : "right";
      const frame = changed.panels.find(({ id }) => id === name)?.frame ?? 1;
      const pushed = push(changed, name, [`${side}-heel`, `${side}-ball`], done.foot / 1000);
      const moved = name.endsWith("contact") ? pushed : retime(pushed, name, frame + done.frames);
      const raised = raise(moved, name, done.hips / 1000);
      const carried = shift(
        push(raised, name, HIPS, done.body / 1000),
        name,
        HIPS,
        done.sway / 1000,
      );
      const foot = FOOT_PARTS.map((part): JointName => `${side}-${part}`);
      const stood = lift(carried, name, foot, done.lifted / 1000);
      const leant = lift(stood, name, ["left-shoulder"], done.shoulder / 1000);
      const rolled = lift(leant, name, [`${side}-toe`, `${side}-ball`], done.toe / 1000);
      const pose = POSES[done.label]; // mostly none: then the label stays
      if (pose === undefined || name.endsWith("contact")) return rolled;
      return withPanel(rolled, name, { pose });
    }, walk()),
  );
/** The same with every pose under its own label, so that each question is asked where it belongs. */
export const asLabelled = roughWalk.map((rough) => ({
  ...rough,
  panels: rough.panels.map((panel) => {
    const pose = POSES.find((known) => panel.id.endsWith(known));
    return pose === undefined ? panel : { ...panel, pose };
  }),
}));
