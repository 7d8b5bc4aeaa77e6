import { limbJoint, SIDES, type Side } from "../../body";
import { gathered } from "../../gathered";
import { clearlyBeyond, greatestOf } from "../beyond";
import type { Finding, Reading, Remark } from "../finding";
import { BENDS_BACK, KNEE_SOURCE } from "../methods/knee";
import { isQuiet } from "../quiet";
import { kneeBend } from "../readings/joint-angles";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";
import { capital, degrees } from "../words";
import { cannotTell, sound } from "./answers";

/**
 * With a larger ± a knee would pass that is bent back as far as one bends forward under the weight.
 * Radians (15°). Marks placed at the strip (± 3 % of a leg and less) give ± 7.5°, which still answers.
 * Source: Winter (2009): 15 to 20° in loading response
 */
const VAGUE_BEYOND = (15 * Math.PI) / 180;

/**
 * Do the knees bend forward? Told from the side at every pose.
 *
 * Shapes:  a remark for each knee of a panel that bends back; else one answer a side
 * Units:   radians
 * Errors:  none; legs that are not marked, or marked too vaguely, answer "cannot-tell"
 * Source:  beside the limit, in `methods/knee`
 */
export function knee(study: Study): readonly Finding[] {
  const { leg, walk } = study;
  if (isQuiet(walk.kind, "knee")) return [];
  const about = { check: "knee", side: null, panels: [] } as const;
  if (leg.kind === "cannot-tell") return [cannotTell(about, leg.needs)];
  const bent = study.inPanels(inPanel);
  return gathered(SIDES, (side) => judge(side, bent));
}

/** The knees of a panel. */
interface Bent {
  readonly panel: WalkPanel;
  readonly left: Knee;
  readonly right: Knee;
}

interface Knee {
  /** Past straight, so that a bent knee is negative. */
  readonly back: Reading | null;
  readonly remark: Remark | null;
}

function inPanel(study: Study, panel: WalkPanel): Bent {
  const of = (side: Side): Knee => {
    const back = bentBack(study, panel, side);
    return { back, remark: back === null ? null : remark(study, side, panel, back) };
  };
  return { panel, left: of("left"), right: of("right") };
}

function judge(side: Side, bent: readonly Bent[]): Finding[] {
  const panels = bent.map(({ panel }) => panel);
  const unread = bent.filter((one) => one[side].back === null).map(({ panel }) => panel);
  const remarks = bent.map((one) => one[side].remark).filter((told) => told !== null);
  const about = { check: "knee", side, panels: unread } as const;
  if (unread.length > 0 || panels.length === 0) {
    const needs = `the ${side} hip, knee and ankle marked in the side view`;
    return [...remarks, cannotTell(about, needs)];
  }
  const vague = bent.filter((one) => isTooVague(one[side].back));
  if (vague.length > 0) {
    const exactly = { ...about, panels: vague.map(({ panel }) => panel) };
    return [...remarks, cannotTell(exactly, `the ${side} knee marked more exactly`)];
  }
  if (remarks.length > 0) return remarks;
  const read = bent.map((one) => one[side].back).filter((back) => back !== null);
  const worst = greatestOf(read, ({ value }) => value);
  return [sound({ ...about, panels }, worst ?? null)];
}

function isTooVague(back: Reading | null): boolean {
  if (back === null) return false;
  const { value, plusMinus } = back;
  const surelyForward = value + plusMinus <= BENDS_BACK;
  return !(surelyForward || plusMinus <= VAGUE_BEYOND);
}

function bentBack(study: Study, panel: WalkPanel, side: Side): Reading | null {
  const told = kneeBend(study.whole(panel).marks.side, side);
  if (told.kind !== "value") return null;
  return { value: -told.value, plusMinus: told.plusMinus, unit: "rad" };
}

function remark(study: Study, side: Side, panel: WalkPanel, back: Reading): Remark | null {
  if (!clearlyBeyond(back.value, back.plusMinus, BENDS_BACK)) return null;
  const joints = (["hip", "knee", "ankle"] as const).map((joint) => limbJoint(side, joint));
  const passes = degrees({ value: BENDS_BACK, plusMinus: 0 });
  return {
    kind: "remark",
    check: "knee",
    level: "shows",
    yardstick: study.yardstick,
    side,
    panels: [panel.id],
    frames: [panel.frame],
    spots: [{ panel: panel.id, view: "side", joints }],
    measured: back,
    expected: { value: BENDS_BACK, plusMinus: 0, unit: "rad" },
    title: capital(`${side} knee bends back`),
    why: `At frame ${panel.frame} the ${side} knee is ${degrees(back)} past straight; up to ${passes} passes as straight. The leg will be seen to break backward.`,
    source: KNEE_SOURCE,
    beyond: (back.value - BENDS_BACK) / BENDS_BACK,
  };
}
