import { type Frame, isStepPose, nearestDrawn, nextDrawn, type StepPose } from "../../motion";
import type { PoseGroup } from "../pose-groups";
import { sharesFor } from "../shares-for";
import { walkingPanels } from "../step";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";

/** A panel and where the yardstick has its pose, in steps from the contact of the step in question. */
interface Anchor {
  readonly panel: WalkPanel;
  readonly at: number;
}

/**
 * The frame of a missing pose: where the yardstick has it between the step's contacts, or between the poses
 * about it where a contact is missing, on a drawn frame of its own between those. Null without room.
 */
export function frameFor(study: Study, group: PoseGroup, pose: StepPose): Frame | null {
  const { walk } = study;
  const share = sharesFor(study, group.side)[pose];
  const anchors = anchorsOf(study, group);
  const before = anchors.findLast(({ at }) => at < share);
  const after = anchors.find(({ at }) => at > share);
  if (before === undefined || after === undefined) return null;
  const [from, to] = contactsAbout(walk.panels, group) ?? [before, after];
  const way = (share - from.at) / (to.at - from.at);
  const moment = from.panel.frame + way * (to.panel.frame - from.panel.frame);
  const least = nextDrawn(before.panel.frame, 1, walk.exposure);
  const most = nextDrawn(after.panel.frame, -1, walk.exposure);
  if (least > most) return null;
  return Math.min(most, Math.max(least, nearestDrawn(moment, walk.exposure)));
}

/** The contacts between which a step's poses are even: its own, or the one before where it has none. */
function contactsAbout(
  panels: readonly WalkPanel[],
  { panels: [first], contact, end }: PoseGroup,
): readonly [Anchor, Anchor] | null {
  if (first === undefined || end?.pose !== "contact") return null;
  const before = panels.findLast(({ pose, frame }) => pose === "contact" && frame < first.frame);
  if (contact !== null)
    return [
      { panel: contact, at: 0 },
      { panel: end, at: 1 },
    ];
  return before === undefined
    ? null
    : [
        { panel: before, at: -1 },
        { panel: end, at: 1 },
      ];
}

/** The step's panels, the one before and the one after, that stand where the yardstick has their pose. */
function anchorsOf(study: Study, { side, panels: own, end }: PoseGroup): Anchor[] {
  const walking = walkingPanels(study.walk.panels);
  const [first] = own;
  const before = first === undefined ? undefined : walking[walking.indexOf(first) - 1];
  const at = ({ pose, weightOn }: WalkPanel, steps: number): number => {
    // In life the up may stand anywhere in its step, so there it tells nothing of where others are.
    const roams = pose === "up" && study.pattern === null && study.common === "life" && steps === 0;
    if (!isStepPose(pose) || roams) return Number.NaN;
    return steps + sharesFor(study, steps === 0 ? side : weightOn)[pose];
  };
  const found = [
    ...(before === undefined ? [] : [{ panel: before, at: at(before, -1) }]),
    ...own.map((panel) => ({ panel, at: at(panel, 0) })),
    ...(end === null ? [] : [{ panel: end, at: at(end, 1) }]),
  ];
  return found.filter(({ at: share }) => Number.isFinite(share));
}
