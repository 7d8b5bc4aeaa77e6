import { limbJoint, SIDES, type Side } from "../../body";
import { gathered } from "../../gathered";
import { rootSumSquare } from "../../geometry";
import { clearlyBeyond, greatestOf } from "../beyond";
import type { Finding, Reading, Remark } from "../finding";
import { frontMark } from "../front-mark";
import { type TrueLengths, trueLengths } from "../limb-bones";
import { BEYOND_REACH, REACH_SOURCE } from "../methods/reach";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";
import { capital, percent } from "../words";
import { cannotTell, sound } from "./answers";

/**
 * With a larger ± a leg of half as much again would pass. Leg lengths; marks placed at the strip (± 3 % of a
 * leg and less) give ± 6 %, which still answers.
 */
const VAGUE_BEYOND = 0.1;

/**
 * Does the leg reach its foot? Hip to ankle from the side, with the depth that the front view adds,
 * against thigh and shank.
 *
 * Shapes:  a remark for each leg of a panel that does not reach; else one answer a side
 * Units:   leg lengths
 * Errors:  none; legs that are not marked, or marked too vaguely, answer "cannot-tell"
 * Source:  beside the limit, in `methods/reach`
 */
export function reach(study: Study): readonly Finding[] {
  const { leg } = study;
  const about = { check: "reach", side: null, panels: [] } as const;
  if (leg.kind === "cannot-tell") return [cannotTell(about, leg.needs)];
  const own = trueLengths(study);
  const reached = study.inPanels(inPanel, own);
  return gathered(SIDES, (side) => judge(side, reached));
}

/** How far the ankles of a panel are from their hips, over what the legs can span. */
interface Reached {
  readonly panel: WalkPanel;
  readonly left: Leg;
  readonly right: Leg;
}

interface Leg {
  readonly measured: Reading | null;
  readonly remark: Remark | null;
}

function inPanel(study: Study, panel: WalkPanel, own: TrueLengths): Reached {
  const of = (side: Side): Leg => {
    const measured = beyondBones(study, panel, side, own);
    const told = measured === null ? null : remark(study, side, panel, measured);
    return { measured, remark: told };
  };
  return { panel, left: of("left"), right: of("right") };
}

function judge(side: Side, reached: readonly Reached[]): Finding[] {
  const panels = reached.map(({ panel }) => panel);
  const unread = reached.filter((one) => one[side].measured === null).map(({ panel }) => panel);
  const remarks = reached.map((one) => one[side].remark).filter((told) => told !== null);
  const needs = `the ${side} hip, knee and ankle marked in the side view`;
  const about = { check: "reach", side, panels: unread } as const;
  if (unread.length > 0 || panels.length === 0) return [...remarks, cannotTell(about, needs)];
  const vague = reached.filter((one) => isTooVague(one[side].measured));
  if (vague.length > 0) {
    const exactly = { ...about, panels: vague.map(({ panel }) => panel) };
    return [...remarks, cannotTell(exactly, `the ${side} hip and ankle marked more exactly`)];
  }
  if (remarks.length > 0) return remarks;
  const read = reached.map((one) => one[side].measured).filter((measured) => measured !== null);
  const farthest = greatestOf(read, ({ value }) => value);
  return [sound({ ...about, panels }, farthest ?? null)];
}

function isTooVague(measured: Reading | null): boolean {
  return measured !== null && !(measured.plusMinus <= VAGUE_BEYOND);
}

/** How much farther than its bones reach an ankle is from its hip; null where that cannot be read. */
function beyondBones(
  study: Study,
  panel: WalkPanel,
  side: Side,
  { thigh, shank }: TrueLengths,
): Reading | null {
  const hip = study.seen(panel, limbJoint(side, "hip"));
  const ankle = study.seen(panel, limbJoint(side, "ankle"));
  if (thigh === null || shank === null || hip === null || ankle === null) return null;
  const [above, below] = (["hip", "ankle"] as const).map((joint) =>
    frontMark(panel, limbJoint(side, joint), study.leg),
  );
  const depth = above == null || below == null ? 0 : above.z - below.z;
  const apart = rootSumSquare(hip.x - ankle.x, hip.y - ankle.y, depth);
  return {
    value: apart - thigh.value - shank.value,
    plusMinus: rootSumSquare(hip.plusMinus, ankle.plusMinus, thigh.plusMinus, shank.plusMinus),
    unit: "leg",
  };
}

function remark(study: Study, side: Side, panel: WalkPanel, measured: Reading): Remark | null {
  if (!clearlyBeyond(measured.value, measured.plusMinus, BEYOND_REACH)) return null;
  const passes = percent({ value: BEYOND_REACH, plusMinus: 0 });
  return {
    kind: "remark",
    check: "reach",
    level: "may-show",
    yardstick: study.yardstick,
    side,
    panels: [panel.id],
    frames: [panel.frame],
    spots: [
      {
        panel: panel.id,
        view: "side",
        joints: [limbJoint(side, "hip"), limbJoint(side, "ankle")],
      },
    ],
    measured,
    expected: { value: BEYOND_REACH, plusMinus: 0, unit: "leg" },
    title: capital(`${side} leg does not reach`),
    why: `At frame ${panel.frame} the ${side} ankle is ${percent(measured)} of a leg farther from its hip than thigh and shank are long; up to ${passes} passes as straight. The leg may be seen to stretch.`,
    source: REACH_SOURCE,
    beyond: (measured.value - BEYOND_REACH) / BEYOND_REACH,
  };
}
