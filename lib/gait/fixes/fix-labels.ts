import { otherSide, type Side } from "../../body";
import { type PoseName, STEP_POSES } from "../../motion";
import { shapeOf } from "../checks/pose-shape";
import type { Remark } from "../finding";
import type { FixChange } from "../fix";
import { type PoseGroup, poseGroups } from "../pose-groups";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";
import type { Proposal } from "./proposal";

/** A label that a panel is to have. */
interface Label {
  readonly panel: WalkPanel;
  readonly pose: PoseName;
  readonly weightOn: Side | null;
}

/**
 * Poses out of order: labels put in order, swapped with the pose that has the right one, or the weight
 * put on the step's side.
 */
export function fixLabels(study: Study, remark: Remark): readonly Proposal[] {
  const groups = poseGroups(study.walk.panels);
  const group = groups.find(({ panels, contact }) => {
    const named = remark.panels[0] === (contact ?? panels[0])?.id;
    return named || panels.some(({ id }) => id === remark.panels[0]);
  });
  if (group === undefined) return [];
  const tries =
    remark.measured.unit === "leg"
      ? shaped(study, group, groups, remark)
      : [
          sidesRight(group),
          withNext(group, remark),
          inOrder(group, STEP_POSES),
          inOrder(group, BUT_THE_UP),
          beginning(group),
          ...turned(group, groups),
        ];
  return tries.flatMap((labels) => {
    const changed = labels.filter(
      ({ panel, pose, weightOn }) => panel.pose !== pose || panel.weightOn !== weightOn,
    );
    return changed.length === 0 ? [] : [{ title: titleOf(changed), changes: changed.map(relabel) }];
  });
}

function titleOf(labels: readonly Label[]): string {
  const [only, second] = labels;
  if (only === undefined || second !== undefined) return `Put ${labels.length} labels right`;
  const { panel, pose, weightOn } = only;
  const what = panel.pose === pose ? `put its weight on the ${weightOn}` : `call it ${pose}`;
  return `Frame ${panel.frame}: ${what}`;
}

function relabel({ panel, pose, weightOn }: Label): FixChange {
  return { kind: "relabel", panel: panel.id, pose, weightOn };
}

/** All of a step's panels carry on its side. */
function sidesRight({ panels, side }: PoseGroup): Label[] {
  return panels.map((panel) => ({ panel, pose: panel.pose, weightOn: side ?? panel.weightOn }));
}

/** A pose that stands before its own contact changes labels with it. */
function withNext({ panels, side, end }: PoseGroup, remark: Remark): Label[] {
  const astray = panels.find(({ id }) => id === remark.panels[0]);
  if (astray === undefined || end?.pose !== "contact" || astray.weightOn === side) return [];
  return [
    { panel: astray, pose: "contact", weightOn: astray.weightOn },
    { panel: end, pose: astray.pose, weightOn: end.weightOn },
  ];
}

/** A step without a contact begins with the one that stands after it. */
function beginning({ panels: [first], contact, end, side }: PoseGroup): Label[] {
  if (first === undefined || contact !== null) return [];
  if (end?.pose !== "contact" || end.weightOn !== side) return [];
  return [
    { panel: first, pose: "contact", weightOn: first.weightOn },
    { panel: end, pose: first.pose, weightOn: end.weightOn },
  ];
}

/** In life the highest hips may come before the passing: then their label stays where it is. */
const BUT_THE_UP: readonly PoseName[] = STEP_POSES.filter((pose) => pose !== "up");

/** Those of a step's labels in the order of its frames. One too many becomes a breakdown. */
function inOrder({ panels }: PoseGroup, poses: readonly PoseName[]): Label[] {
  const named = panels.filter(({ pose }) => poses.includes(pose));
  const labels = named
    .map(({ pose }) => pose)
    .toSorted((a, b) => rank(a) - rank(b))
    .map((pose, at, all) => (at > 0 && all[at - 1] === pose ? "breakdown" : pose));
  return named.flatMap((panel, at) => {
    const pose = labels[at];
    return pose === undefined ? [] : [{ panel, pose, weightOn: panel.weightOn }];
  });
}

function rank(pose: PoseName): number {
  return (STEP_POSES as readonly string[]).indexOf(pose);
}

/** A whole step to the other side: the one that follows, or this one. */
function turned(group: PoseGroup, groups: readonly PoseGroup[]): Label[][] {
  const { end } = group;
  const following = groups.find(({ contact }) => contact !== null && contact === end);
  return [following, group]
    .filter((one) => one !== undefined)
    .map(({ panels, side }) =>
      panels.map((panel) => ({
        panel,
        pose: panel.pose,
        weightOn: side === null ? panel.weightOn : otherSide(side),
      })),
    );
}

/** A drawing that reads as another pose: changes labels with that pose, or gets its label. */
function shaped(
  study: Study,
  group: PoseGroup,
  groups: readonly PoseGroup[],
  { panels: [id] }: Remark,
): Label[][] {
  const panel = group.panels.find((one) => one.id === id);
  const shape = panel === undefined ? null : shapeOf(study, group, panel);
  if (panel === undefined || shape?.kind !== "other") return [];
  const near = groups.flatMap(({ panels }) => panels).filter(({ pose }) => pose === shape.pose);
  const swaps = near
    .toSorted((a, b) => Math.abs(a.frame - panel.frame) - Math.abs(b.frame - panel.frame))
    .map((other): Label[] => [
      { panel, pose: shape.pose, weightOn: panel.weightOn },
      { panel: other, pose: panel.pose, weightOn: other.weightOn },
    ]);
  return [...swaps.slice(0, 2), [{ panel, pose: shape.pose, weightOn: panel.weightOn }]];
}
