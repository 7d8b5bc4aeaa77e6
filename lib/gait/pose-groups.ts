import { otherSide, type Side } from "../body";
import { gathered } from "../gathered";
import { areSame } from "./memory";
import { agreedSide, walkingPanels } from "./step";
import type { WalkPanel } from "./walk";

/** The panels of one step as they were labelled, whether or not they make a whole step. */
export interface PoseGroup {
  /** The side that carries; null while nobody said. */
  readonly side: Side | null;
  /** Its first panel when that is a contact; null where a step's contact was not drawn. */
  readonly contact: WalkPanel | null;
  /** All of its panels, in frame order; the contact is the first of them. */
  readonly panels: readonly WalkPanel[];
  /** The panel that follows the group: the next contact, unless that was not drawn either. */
  readonly end: WalkPanel | null;
}

/**
 * The strip's panels by steps: from a contact to the next. Where the weight changes sides for good
 * and the contact that would say so was not drawn, the step without a contact is a group too.
 *
 * Shapes:  panels in frame order, groups in the same order; stands and lead-ins belong to none
 * Errors:  none
 */
export function poseGroups(panels: readonly WalkPanel[]): readonly PoseGroup[] {
  const before = groupsOfList.get(panels);
  if (before !== undefined) return before;
  const groups = groupsIn(panels);
  groupsOfList.set(panels, groups);
  return groups;
}

/** Two checks ask for the groups of one list. */
const groupsOfList = new WeakMap<readonly WalkPanel[], readonly PoseGroup[]>();

function groupsIn(panels: readonly WalkPanel[]): readonly PoseGroup[] {
  const walking = walkingPanels(panels);
  const starts = gathered(walking, (panel, index) => (panel.pose === "contact" ? [index] : []));
  const [first] = starts;
  const before = first === undefined ? walking : walking.slice(0, first);
  const groups = [
    ...withoutContact(before, walking[first ?? walking.length] ?? null),
    ...gathered(starts, (start, nth) => {
      const end = walking[starts[nth + 1] ?? walking.length] ?? null;
      return parted(walking.slice(start, starts[nth + 1]), end);
    }),
  ];
  return groups.map(sameGroup);
}

/** The group that a panel began when it was last looked at. */
const groupOfPanel = new WeakMap<WalkPanel, PoseGroup>();

/** A group of the same panels is the same group from one look to the next, so it is known by its identity. */
function sameGroup(group: PoseGroup): PoseGroup {
  const [first] = group.panels;
  if (first === undefined) return group;
  const before = groupOfPanel.get(first);
  const isSame = before?.end === group.end && before.contact === group.contact;
  if (isSame && areSame(before.panels, group.panels)) return before;
  groupOfPanel.set(first, group);
  return group;
}

function withoutContact(panels: readonly WalkPanel[], end: WalkPanel | null): PoseGroup[] {
  return panels.length === 0 ? [] : [{ side: agreedSide(panels), contact: null, panels, end }];
}

/** A contact and what follows it; a tail that carries on the other side is a step of its own. */
function parted(panels: readonly WalkPanel[], end: WalkPanel | null): PoseGroup[] {
  const [contact, ...inner] = panels;
  if (contact === undefined) return [];
  const side = contact.weightOn ?? agreedSide(inner);
  const own = inner.findLastIndex(({ weightOn }) => side === null || weightOn !== otherSide(side));
  const tail = inner.slice(own + 1);
  const sameAgain = end === null || end.weightOn === side;
  if (tail.length === 0 || !sameAgain) return [{ side, contact, panels, end }];
  const [follows = null] = tail;
  return [
    { side, contact, panels: panels.slice(0, own + 2), end: follows },
    ...withoutContact(tail, end),
  ];
}
