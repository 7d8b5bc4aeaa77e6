import type { Side } from "../../body";
import { gathered } from "../../gathered";
import type { PoseName } from "../../motion";
import type { Finding, Remark } from "../finding";
import { ORDERED, OUT_OF_ORDER, POSE_ORDER_SOURCES } from "../methods/pose-order";
import { patternWords, posesOf, ruleFor } from "../pattern";
import { type PoseGroup, poseGroups } from "../pose-groups";
import { isQuiet } from "../quiet";
import type { Step } from "../step";
import type { Study } from "../study";
import type { CommonYardstick, WalkPanel } from "../walk";
import { capital, listed, sided } from "../words";
import { cannotTell, NEEDS_A_STEP, sound } from "./answers";
import { groupShape } from "./pose-shape";
import { whoseStep } from "./step-words";

/**
 * Do the labels run contact, down, passing, up and change sides with each step, and is each pose
 * drawn as it is labelled?
 *
 * Shapes:  a remark for each thing that is out of order; else one answer a step
 * Units:   poses, or leg lengths where the drawing reads as another pose
 * Errors:  none; feet that are not marked answer "cannot-tell"
 * Source:  beside each yardstick, and in `pose-shape`
 */
export function poseOrder(study: Study): readonly Finding[] {
  const { walk } = study;
  if (isQuiet(walk.kind, "pose-order")) return [];
  const groups = poseGroups(walk.panels).filter(({ panels, end }) => panels.length > 1 || end);
  if (groups.length === 0) {
    return [cannotTell({ check: "pose-order", side: null, panels: [] }, NEEDS_A_STEP)];
  }
  if (study.pattern?.kind === "cannot-tell") {
    return [cannotTell({ check: "pose-order", side: null, panels: [] }, study.pattern.needs)];
  }
  const rules = [study.pattern?.step ?? null, study.pattern?.partner ?? null] as const;
  return gathered(groups, (group) => {
    const [first] = group.panels;
    return first === undefined ? [] : study.once(first, judge, group, ...rules);
  });
}

function judge(
  study: Study,
  _first: WalkPanel,
  group: PoseGroup,
  ..._rules: readonly (Step | null)[]
): Finding[] {
  const about = { check: "pose-order", side: group.side, panels: group.panels } as const;
  const { remarks: shapes, needs } = groupShape(study, group);
  const remarks = [
    ...wrongSide(study, group),
    ...wrongOrder(study, group),
    ...sameFootAgain(study, group),
    ...shapes,
  ];
  if (needs !== null) return [...remarks, cannotTell(about, needs)];
  return remarks.length > 0 ? remarks : [sound(about, { value: 0, plusMinus: 0, unit: "poses" })];
}

/** Panels inside a step that carry on its other side. */
function wrongSide(study: Study, group: PoseGroup): Remark[] {
  const { side, panels } = group;
  const astray = panels.filter(({ weightOn }) => weightOn !== null && weightOn !== side);
  if (side === null || astray.length <= OUT_OF_ORDER) return [];
  const poses = listed(astray.map(({ weightOn, pose }) => sided(weightOn, pose)));
  return [
    {
      ...located(study, group, astray),
      title: capital(`${poses} within the ${sided(side, "step")}`),
      why: `${where(astray)} ${astray.length === 1 ? "carries" : "carry"} on the other foot than the ${sided(side, "step")} in which ${astray.length === 1 ? "it stands" : "they stand"} (${astray.length} of its ${panels.length} panels, where none should). The weight may seem to jump from foot to foot.`,
    },
  ];
}

/** Panels whose label comes too late or too early, by the order of the poses. */
function wrongOrder(study: Study, group: PoseGroup): Remark[] {
  const { side, panels } = group;
  const order = orderOf(study, side);
  const breaks = (before: WalkPanel, after: WalkPanel) => isBroken(order.poses, before, after);
  const named = panels.filter(
    ({ pose, weightOn }) => order.poses.includes(pose) && (weightOn === null || weightOn === side),
  );
  const swapped = named.filter((panel, index) =>
    named.some((other, nth) =>
      nth < index ? breaks(other, panel) : nth > index && breaks(panel, other),
    ),
  );
  if (swapped.length <= OUT_OF_ORDER) return [];
  const drawn = listed(named.map(({ pose, frame }) => `${pose} (${frame})`));
  return [
    {
      ...located(study, group, swapped),
      title: capital(`${sided(side, "step")} has its poses out of order`),
      why: `${capital(whoseStep(side))} runs ${drawn}; ${order.who} ${order.poses.join(", ")}. ${swapped.length} of its ${named.length} poses stand out of order, where none should: the step may be seen to go back and forth.`,
    },
  ];
}

const WHO: Readonly<Record<CommonYardstick, string>> = {
  trade: "the trade draws",
  life: "people go through",
};

/** The order that a step's poses are asked for in, and who asks: by the pattern step, its own. */
function orderOf(
  study: Study,
  side: Side | null,
): { readonly poses: readonly PoseName[]; readonly who: string } {
  const { pattern, common } = study;
  return pattern?.kind === "pattern"
    ? {
        poses: posesOf(ruleFor(pattern, study, side)),
        who: `${patternWords(study, pattern, side)} runs`,
      }
    : { poses: ORDERED[common], who: WHO[common] };
}

/** Two poses that stand the wrong way round. On one frame either may be told first. */
function isBroken(order: readonly PoseName[], before: WalkPanel, after: WalkPanel): boolean {
  return before.frame < after.frame && order.indexOf(before.pose) >= order.indexOf(after.pose);
}

/** Twice the same foot, with nothing between that carries on the other. */
function sameFootAgain(study: Study, group: PoseGroup): Remark[] {
  const { side, contact, end } = group;
  if (side === null || end === null || end.pose !== "contact" || end.weightOn !== side) return [];
  const again = [contact ?? group.panels[0], end].filter((panel) => panel !== undefined);
  const before = contact === null ? `${side} poses` : `the ${side} contact`;
  return [
    {
      ...located(study, group, again),
      title: capital(`${side} foot lands twice in a row`),
      why: `After ${before} at frame ${again[0]?.frame} the ${side} foot lands again at frame ${end.frame}, and the other foot's step is not between: 1 pose out of order, where none should be. It may read as a hop.`,
    },
  ];
}

type Located = Omit<Remark, "title" | "why">;

function located(study: Study, { side }: PoseGroup, panels: readonly WalkPanel[]): Located {
  return {
    kind: "remark",
    check: "pose-order",
    level: "may-show",
    yardstick: study.yardstick,
    side,
    panels: panels.map(({ id }) => id),
    frames: panels.map(({ frame }) => frame),
    spots: [], // a label has no place on the drawing
    measured: { value: panels.length, plusMinus: 0, unit: "poses" },
    expected: { value: OUT_OF_ORDER, plusMinus: 0, unit: "poses" },
    source:
      study.pattern?.kind === "pattern"
        ? patternWords(study, study.pattern, side)
        : POSE_ORDER_SOURCES[study.common],
    beyond: panels.length,
  };
}

function where(panels: readonly WalkPanel[]): string {
  const frames = listed(panels.map(({ frame }) => `${frame}`));
  return panels.length === 1 ? `Frame ${frames}` : `Frames ${frames}`;
}
