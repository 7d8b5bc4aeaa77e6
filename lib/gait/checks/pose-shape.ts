import type { JointName, LegLength, Side } from "../../body";
import { rootSumSquare } from "../../geometry";
import { isStepPose } from "../../motion";
import { clearlyBeyond, greatestOf } from "../beyond";
import type { Reading, Remark } from "../finding";
import { feetAlong, footPoints, isWholeFoot, lowest } from "../foot";
import { CROSSING, IN_THE_AIR, NOT_A_PASSING, SHAPE_SOURCE, WIDER } from "../methods/pose-order";
import { perPanel } from "../per-panel";
import type { PoseGroup } from "../pose-groups";
import { footPitch } from "../readings/joint-angles";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";
import { capital, listed, percent, sided } from "../words";
import { whoseStep } from "./step-words";

/** What a drawing reads as: a pose with its reading, nothing but its label, or not to be told. */
type Shape =
  | { readonly kind: "other"; readonly pose: "contact" | "passing"; readonly measured: Reading }
  | { readonly kind: "as-labelled" }
  | { readonly kind: "unmarked" };

/** What a group's drawings read as: which are another pose than their label, and what that still needs. */
export interface GroupShape {
  readonly remarks: readonly Remark[];
  /** As a phrase after "needs"; null when nothing is. */
  readonly needs: string | null;
}

/** The poses of a step as they are drawn, against their labels. */
export function groupShape(study: Study, group: PoseGroup): GroupShape {
  const remarks: Remark[] = [];
  const open: WalkPanel[] = [];
  for (const panel of panelsOf(group)) {
    const shape = shapeOf(study, group, panel);
    if (shape.kind === "other") remarks.push(remark(study, group, panel, shape));
    if (shape.kind === "unmarked") open.push(panel);
  }
  return { remarks, needs: needsFor(study, group, open) };
}

function needsFor({ leg }: Study, { side }: PoseGroup, open: readonly WalkPanel[]): string | null {
  if (leg.kind === "cannot-tell") return leg.needs;
  if (open.length === 0) return null;
  const poses = listed(open.map(({ pose }) => pose));
  return `both feet marked, heel and toe, at the ${poses} of ${whoseStep(side)}`;
}

function panelsOf({ panels }: PoseGroup): WalkPanel[] {
  return panels.filter(({ pose }) => isStepPose(pose));
}

/** The pose that a panel is drawn as, where it can be told. */
export function shapeOf(study: Study, group: PoseGroup, panel: WalkPanel): Shape {
  const apart = feetApart(panel, study.leg);
  if (apart === null) return { kind: "unmarked" };
  if (NOT_A_PASSING[study.common].includes(panel.pose)) {
    if (clearlyBeyond(-apart.value, apart.plusMinus, -CROSSING)) {
      const lifted = oneLifted(panel, study.leg);
      if (lifted === null) return { kind: "unmarked" };
      if (lifted) return { kind: "other", pose: "passing", measured: apart };
    }
  }
  return panel.pose === "contact" ? { kind: "as-labelled" } : asContact(study, group, panel, apart);
}

function asContact(study: Study, group: PoseGroup, panel: WalkPanel, apart: Reading): Shape {
  const about = [group.contact, group.end].filter((contact) => contact?.pose === "contact");
  const widths = about.map((contact) => (contact == null ? null : feetApart(contact, study.leg)));
  const read = widths.filter((width) => width !== null);
  const widest = greatestOf(read, ({ value }) => value);
  // Steps may be long and short by turns: one contact alone does not say how wide a contact is.
  if (widest === undefined || read.length < 2) return { kind: "as-labelled" };
  const measured: Reading = {
    value: apart.value - widest.value,
    plusMinus: rootSumSquare(apart.plusMinus, widest.plusMinus),
    unit: "leg",
  };
  if (!clearlyBeyond(measured.value, measured.plusMinus, WIDER)) return { kind: "as-labelled" };
  const pitch = footPitch(panel.marks.side, frontFoot(study, panel));
  if (pitch.kind === "cannot-tell") return { kind: "unmarked" };
  return clearlyBeyond(pitch.value, pitch.plusMinus, 0)
    ? { kind: "other", pose: "contact", measured }
    : { kind: "as-labelled" };
}

/** How far apart the feet are along the walk, by both ankles or both heels. */
const feetApart = perPanel((panel, leg): Reading | null => {
  const feet = feetAlong(panel, leg);
  if (feet === null) return null;
  const { left, right } = feet;
  return {
    value: Math.abs(left.x - right.x),
    plusMinus: rootSumSquare(left.plusMinus, right.plusMinus),
    unit: "leg",
  };
});

function frontFoot(study: Study, panel: WalkPanel): Side {
  const feet = feetAlong(panel, study.leg);
  return feet !== null && feet.left.x > feet.right.x ? "left" : "right";
}

/** Whether one foot is clearly above the other; null where a foot is not marked. */
function oneLifted(panel: WalkPanel, leg: LegLength): boolean | null {
  const feet = (["left", "right"] as const).map((side) => footPoints(panel, side, leg));
  if (!feet.every(isWholeFoot)) return null;
  const [left, right] = feet.map(lowest);
  if (left == null || right == null) return null;
  const plusMinus = rootSumSquare(left.plusMinus, right.plusMinus);
  return clearlyBeyond(Math.abs(left.y - right.y), plusMinus, IN_THE_AIR);
}

function remark(
  { yardstick }: Study,
  { side }: PoseGroup,
  panel: WalkPanel,
  { pose, measured }: Extract<Shape, { kind: "other" }>,
): Remark {
  const limit = pose === "passing" ? CROSSING : WIDER;
  const seen =
    pose === "passing"
      ? `its ankles are ${percent(measured)} of a leg apart with one foot in the air; nearer than ${percent({ value: limit, plusMinus: 0 })} reads as a passing`
      : `its feet are ${percent(measured)} of a leg wider apart than at the contacts about it, with the front toe up; more than ${percent({ value: limit, plusMinus: 0 })} reads as a contact`;
  return {
    kind: "remark",
    check: "pose-order",
    level: "may-show",
    yardstick,
    side,
    panels: [panel.id],
    frames: [panel.frame],
    spots: [{ panel: panel.id, view: "side", joints: FEET }],
    measured,
    expected: { value: limit, plusMinus: 0, unit: "leg" },
    title: capital(`${sided(panel.weightOn, panel.pose)} reads as a ${pose}`),
    why: `Frame ${panel.frame} is labelled ${panel.pose}, but ${seen}. The step may be timed and judged by a pose that is not drawn there.`,
    source: SHAPE_SOURCE,
    beyond: Math.abs(measured.value - limit) / limit,
  };
}

const FEET: readonly JointName[] = ["left-ankle", "right-ankle"];
