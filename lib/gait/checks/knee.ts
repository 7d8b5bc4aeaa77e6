import { limbJoint, SIDES, type Side } from "../../body";
import { clearlyBeyond, greatestFirst } from "../beyond";
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
  return SIDES.flatMap((side) => judge(study, side));
}

interface Bent {
  readonly panel: WalkPanel;
  /** Past straight, so that a bent knee is negative. */
  readonly back: Reading;
}

function judge(study: Study, side: Side): Finding[] {
  const { panels } = study.walk;
  const read = panels.flatMap((panel): Bent[] => {
    const back = bentBack(study, panel, side);
    return back === null ? [] : [{ panel, back }];
  });
  const unread = panels.filter((panel) => !read.some((one) => one.panel === panel));
  const remarks = read.flatMap((one) => remark(study, side, one));
  const about = { check: "knee", side, panels: unread } as const;
  if (unread.length > 0 || panels.length === 0) {
    const needs = `the ${side} hip, knee and ankle marked in the side view`;
    return [...remarks, cannotTell(about, needs)];
  }
  const vague = read.filter(({ back }) => isTooVague(back));
  if (vague.length > 0) {
    const exactly = { ...about, panels: vague.map(({ panel }) => panel) };
    return [...remarks, cannotTell(exactly, `the ${side} knee marked more exactly`)];
  }
  if (remarks.length > 0) return remarks;
  const [worst] = read.toSorted((a, b) => greatestFirst(a.back.value, b.back.value));
  return [sound({ ...about, panels }, worst?.back ?? null)];
}

function isTooVague({ value, plusMinus }: Reading): boolean {
  const surelyForward = value + plusMinus <= BENDS_BACK;
  return !(surelyForward || plusMinus <= VAGUE_BEYOND);
}

function bentBack(study: Study, panel: WalkPanel, side: Side): Reading | null {
  const told = kneeBend(study.whole(panel).marks.side, side);
  if (told.kind !== "value") return null;
  return { value: -told.value, plusMinus: told.plusMinus, unit: "rad" };
}

function remark(study: Study, side: Side, { panel, back }: Bent): Remark[] {
  if (!clearlyBeyond(back.value, back.plusMinus, BENDS_BACK)) return [];
  const joints = (["hip", "knee", "ankle"] as const).map((joint) => limbJoint(side, joint));
  const passes = degrees({ value: BENDS_BACK, plusMinus: 0 });
  return [
    {
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
    },
  ];
}
