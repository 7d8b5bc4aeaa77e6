import { limbJoint, otherSide, type Side } from "../../body";
import { gathered } from "../../gathered";
import { clearlyBeyond, greatestFirst, greatestOf } from "../beyond";
import type { CannotTell, Finding, Level, Reading, Remark } from "../finding";
import { placeOf } from "../ground-mark";
import type { Grade } from "../method";
import { BACKWARD, BACKWARD_SOURCE, SLIDE_RULES, type SlideRule } from "../methods/slide";
import { stanceTravel, type Travel } from "../places/stance-travel";
import type { Step } from "../step";
import type { Study } from "../study";
import type { Walk, WalkPanel } from "../walk";
import { capital, percent } from "../words";

const RANK: Readonly<Record<Level, number>> = { shows: 2, "may-show": 1, tidy: 0 };

/**
 * Does the foot that carries the weight stay where it was put down? The ball is followed from the
 * down to passing, the heel from the contact. That the ball and ankle come forward while the foot
 * rolls over its heel, between contact and flat, is honest and not asked about.
 *
 * Shapes:  at most one remark a step; else an answer for each mark
 * Units:   leg lengths along the ground, forward positive
 * Errors:  none; missing poses, marks or sides answer "cannot-tell", and so do marks too vague to tell
 * Source:  beside each limit
 */
export function slide(study: Study): readonly Finding[] {
  if (study.steps.length === 0) {
    return [cannotTell(null, [], "a contact and the poses that follow it")];
  }
  const { ground, panels } = study.walk;
  // Solved places that a hand has set some of may tie a foot to any other.
  const tied = ground === "solved" && panels.some(({ place }) => place !== null) ? study : null;
  return gathered(study.inStepsWithNext(inStep, tied), (told) => told);
}

function inStep(study: Study, step: Step, _tied: Study | null): Finding[] {
  const { weightOn } = step;
  if (weightOn === null) {
    return [cannotTell(null, [step.contact.id], "to know whose weight the step carries")];
  }
  return oneRemark(SLIDE_RULES.map((rule) => judge(study, step, weightOn, rule)));
}

/** Both marks of a foot that slips tell of one slip: the graver is kept. */
function oneRemark(findings: readonly Finding[]): Finding[] {
  const remarks = findings.filter((finding) => finding.kind === "remark");
  const [worst] = remarks.toSorted(
    (a, b) => RANK[b.level] - RANK[a.level] || greatestFirst(a.beyond, b.beyond),
  );
  const others = findings.filter((finding) => finding.kind === "cannot-tell");
  return worst === undefined ? [...findings] : [worst, ...others];
}

function judge(study: Study, step: Step, side: Side, rule: SlideRule): Finding {
  const joint = limbJoint(side, rule.joint);
  const { leg, walk } = study;
  const from = step[rule.from];
  const { passing } = step;
  const panels = [from, passing].filter((panel) => panel !== null).map(({ id }) => id);
  if (leg.kind === "cannot-tell") return cannotTell(side, panels, leg.needs);
  const placed = [from, passing].every((panel) => panel === null || isPlaced(panel, walk));
  if (!placed) return cannotTell(side, panels, "the advance, or a place for each panel");
  if (
    from === null ||
    passing === null ||
    study.ground(from, joint) === null ||
    study.ground(passing, joint) === null
  ) {
    const needs = `the ${side} ${rule.joint} marked at its ${rule.from} and passing`;
    return cannotTell(side, panels, needs);
  }
  const stance = stanceOn(step, side, from, passing);
  const followed = stanceTravel(study, { step, side, joint: rule.joint, panels: stance });
  const travels = followed?.travels ?? [];
  const farthest = greatestOf(travels, (one) => excess(one, rule));
  if (followed === null || farthest === undefined) {
    const isHidden = stance.length > 1 && walk.ground === "solved";
    const needs = isHidden ? SOLVED_BY_IT : `the ${side} passing after its ${rule.from}`;
    return cannotTell(side, panels, needs);
  }
  const limit = limitBroken(farthest.measured, rule);
  if (limit === null && travels.some((one) => isTooVague(one, rule))) {
    return cannotTell(side, panels, `the ${side} ${rule.joint} marked more exactly`);
  }
  if (limit === null && followed.untied.length > 0) return cannotTell(side, panels, SOLVED_BY_IT);
  if (limit === null) {
    return { kind: "sound", check: "slide", side, panels, measured: farthest.measured };
  }
  return remark(study, { side, rule, from: followed.from, limit, farthest });
}

/** Where places were solved from the very foot that is asked about. */
const SOLVED_BY_IT =
  "a place set by hand, or another planted mark beside it: places were solved from this foot";

/** The panels of the stance up to passing that carry this side's weight. */
function stanceOn(step: Step, side: Side, from: WalkPanel, passing: WalkPanel): WalkPanel[] {
  const { panels } = step;
  const later = panels
    .slice(panels.indexOf(from) + 1, panels.indexOf(passing) + 1)
    .filter(({ weightOn }) => weightOn !== otherSide(side));
  return later.length === 0 ? [] : [from, ...later];
}

function isPlaced(panel: WalkPanel, walk: Walk): boolean {
  return Number.isFinite(placeOf(panel, walk));
}

function limitsFor({ value }: Reading, rule: SlideRule): readonly Grade[] {
  return value < 0 ? BACKWARD : rule.forward;
}

/** How far a travel lies beyond its gravest limit: what tells the worst panel of a stance. */
function excess({ measured }: Travel, rule: SlideRule): number {
  const gravest = limitsFor(measured, rule)[0]?.value ?? Number.NaN;
  return Math.abs(measured.value) - measured.plusMinus - gravest;
}

function limitBroken(measured: Reading, rule: SlideRule): Grade | null {
  const { value, plusMinus } = measured;
  const broken = limitsFor(measured, rule).find((limit) =>
    clearlyBeyond(Math.abs(value), plusMinus, limit.value),
  );
  return broken ?? null;
}

/**
 * Whether a slip of twice the gravest limit could pass unseen: it is seen while the ± is no more than
 * that limit. Then a foot cannot be called still. Marks placed at the strip (± 3 % of a leg and less) give
 * ± 4.2 %, which still answers. The smaller limit backward is not asked, for they could never answer it.
 */
function isTooVague({ measured }: Travel, rule: SlideRule): boolean {
  const gravest = rule.forward[0]?.value ?? 0;
  return !(measured.plusMinus <= gravest);
}

interface Slip {
  readonly side: Side;
  readonly rule: SlideRule;
  readonly from: WalkPanel;
  readonly limit: Grade;
  readonly farthest: Travel;
}

function remark({ yardstick, walk }: Study, { side, rule, from, limit, farthest }: Slip): Remark {
  const { measured, panel } = farthest;
  const back = measured.value < 0;
  const most = percent({ value: limit.value, plusMinus: 0 });
  const way = back ? "back" : "forward";
  return {
    kind: "remark",
    check: "slide",
    level: limit.level,
    yardstick,
    side,
    panels: [from.id, panel.id],
    frames: [from.frame, panel.frame],
    spots: [from, panel].map(({ id }) => ({
      panel: id,
      view: "side",
      joints: [limbJoint(side, rule.joint)],
    })),
    measured,
    expected: { value: back ? -limit.value : limit.value, plusMinus: 0, unit: "leg" },
    title: capital(back ? `${side} foot slides back` : `${side} foot slips`),
    why: `${walk.ground === "solved" ? "The panels are placed so that planted feet stay still. " : ""}The ${side} foot carries the weight and its ${rule.joint} moves ${percent(measured)} of a leg ${way} from frame ${from.frame} to ${panel.frame}; up to ${most} passes as planted. It ${limit.level === "shows" ? "will" : "may"} be seen to slide.`,
    source: back ? BACKWARD_SOURCE : rule.source,
    beyond: (Math.abs(measured.value) - limit.value) / limit.value,
  };
}

function cannotTell(side: Side | null, panels: readonly string[], needs: string): CannotTell {
  return { kind: "cannot-tell", check: "slide", side, panels, needs };
}
