import type { Side } from "../../body";
import { gathered } from "../../gathered";
import type { StepPose } from "../../motion";
import type { Finding, Remark } from "../finding";
import { ASKED, LEVEL_WITHOUT, MISSING_POSE_SOURCES } from "../methods/missing-pose";
import { patternWords, posesOf, ruleFor } from "../pattern";
import { type PoseGroup, poseGroups } from "../pose-groups";
import { isQuiet } from "../quiet";
import type { Step } from "../step";
import type { Study } from "../study";
import type { CommonYardstick, WalkPanel, Yardstick } from "../walk";
import { capital, listed, sided } from "../words";
import { cannotTell, NEEDS_A_STEP, sound } from "./answers";
import { nextContact } from "./step-words";

/** What a step lacks without a pose. */
const SEES: Readonly<Record<StepPose, string>> = {
  contact: "nothing says where the foot lands, and the weight will seem to change legs in the air",
  down: "the leg may seem to take the weight without giving",
  passing: "nothing says how the body gets over the standing leg, and it will seem to drift across",
  up: "there is nothing for the hips to come down from: each step will hitch",
};

/**
 * Has every step the poses that the yardstick asks for? Asked of the labels alone, and only of a
 * step that has ended: a strip is drawn from left to right, and what is still to come is not missing.
 *
 * Shapes:  one answer a step
 * Units:   poses
 * Errors:  none; a step that has no end yet, or began before the strip, answers "cannot-tell"
 * Source:  beside each yardstick
 */
export function missingPose(study: Study): readonly Finding[] {
  const { walk } = study;
  if (isQuiet(walk.kind, "missing-pose")) return [];
  const groups = poseGroups(walk.panels);
  const about = { check: "missing-pose", side: null, panels: [] } as const;
  if (groups.length === 0) return [cannotTell(about, NEEDS_A_STEP)];
  const { pattern } = study;
  if (pattern?.kind === "cannot-tell") return [cannotTell(about, pattern.needs)];
  const rules = [pattern?.step ?? null, pattern?.partner ?? null] as const;
  return gathered(groups, (group, nth) => {
    const [first] = group.panels;
    if (first === undefined) return [];
    const before = nth === 0 ? opens(groups, group) : (groups[nth - 1] ?? null);
    return study.once(first, judge, group, before, ...rules);
  });
}

/** What stands before the first group: nothing, or what closes the loop at the other end of the strip. */
function opens(groups: readonly PoseGroup[], group: PoseGroup): "open" | "closed" {
  return closesTheLoop(groups, group) ? "closed" : "open";
}

/** The poses that a step is asked for, in their order, and who asks for them. */
interface Asks {
  readonly poses: readonly StepPose[];
  readonly who: string;
  readonly source: string;
}

/** The poses that a step of this side is asked for: by the pattern step, those that it has. */
export function posesAsked(study: Study, side: Side | null): Asks {
  const { walk, common, pattern } = study;
  const { poses, who, source } =
    pattern?.kind === "pattern"
      ? {
          poses: posesOf(ruleFor(pattern, study, side)),
          who: `${patternWords(study, pattern, side)} has`,
          source: patternWords(study, pattern, side),
        }
      : { poses: ASKED[common], who: WHO_ASKS[common], source: MISSING_POSE_SOURCES[common] };
  const asked = poses.filter((pose) => pose !== "up" || !isQuiet(walk.kind, "missing-pose:up"));
  return { poses: asked, who, source };
}

/** @param before the group before this one; how the strip begins where there is none */
function judge(
  study: Study,
  _first: WalkPanel,
  group: PoseGroup,
  before: PoseGroup | "open" | "closed" | null,
  ..._rules: readonly (Step | null)[]
): Finding[] {
  const { side, contact, panels, end } = group;
  const about = { check: "missing-pose", side, panels } as const;
  if (contact === null && before === "closed") return [];
  if (contact === null && before === "open") {
    return [cannotTell(about, `the contact that the ${sided(side, "step")} begins with`)];
  }
  if (contact !== null && end === null) {
    // A contact with nothing after it ends the step before and starts none.
    return panels.length === 1 ? [] : [cannotTell(about, nextContact(side, contact))];
  }
  const follows = typeof before === "string" ? null : before;
  const drawn = new Set([...panels, ...strays(follows, side)].map(({ pose }) => pose));
  const asks = posesAsked(study, side);
  const { poses: asked } = asks;
  const lacking = asked.filter((pose) => !drawn.has(pose));
  if (lacking.length === 0) {
    return [sound(about, { value: asked.length, plusMinus: 0, unit: "poses" })];
  }
  const { yardstick } = study;
  return [remark({ group, before: follows, lacking, asks, yardstick })];
}

/** A strip may begin within a step whose contact closes the loop at its end. */
function closesTheLoop(groups: readonly PoseGroup[], { side }: PoseGroup): boolean {
  const last = groups.at(-1);
  return last?.contact != null && (last.side === null || last.side === side);
}

/** Panels of this side among the step before: they are in the wrong order, not missing. */
function strays(before: PoseGroup | null, side: PoseGroup["side"]): readonly WalkPanel[] {
  if (before === null || side === null || before.side === side) return [];
  return before.panels.filter(({ weightOn }) => weightOn === side);
}

interface Missing {
  readonly group: PoseGroup;
  readonly before: PoseGroup | null;
  readonly lacking: readonly StepPose[];
  readonly asks: Asks;
  readonly yardstick: Yardstick;
}

function remark({ group, before, lacking, asks, yardstick }: Missing): Remark {
  const { side, panels, end } = group;
  const { poses: asked, who, source } = asks;
  const there = asked.length - lacking.length;
  const around = [before?.panels.at(-1), ...panels, end]
    .filter((panel) => panel != null)
    .filter((panel) => lacking.includes("contact") || panel !== before?.panels.at(-1));
  const level = lacking.some((pose) => LEVEL_WITHOUT[pose] === "shows") ? "shows" : "may-show";
  const span = `from frame ${around[0]?.frame} to ${around.at(-1)?.frame}`;
  const sees = lacking.map((pose) => `without its ${pose} ${SEES[pose]}`);
  return {
    kind: "remark",
    check: "missing-pose",
    level,
    yardstick,
    side,
    panels: around.map(({ id }) => id),
    frames: around.map(({ frame }) => frame),
    spots: [], // what is not drawn has no place on a drawing
    measured: { value: there, plusMinus: 0, unit: "poses" },
    expected: { value: asked.length, plusMinus: 0, unit: "poses" },
    title: capital(
      `${sided(side, "step")} has no ${listed(lacking).replaceAll(" and ", " and no ")}`,
    ),
    why: `${capital(`the ${sided(side, "step")}`)}, ${span}, has ${there} of the ${asked.length} poses that ${who}: ${sees.join("; ")}.`,
    source,
    beyond: lacking.length / asked.length,
  };
}

const WHO_ASKS: Readonly<Record<CommonYardstick, string>> = {
  trade: "the trade draws",
  life: "people go through",
};
