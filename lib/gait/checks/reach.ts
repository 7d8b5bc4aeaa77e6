import { limbJoint, SIDES, type Side } from "../../body";
import { rootSumSquare } from "../../geometry";
import { clearlyBeyond, greatestFirst } from "../beyond";
import type { Finding, Reading, Remark } from "../finding";
import { frontMark } from "../front-mark";
import { trueLengths } from "../limb-bones";
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
  return SIDES.flatMap((side) => judge(study, side));
}

interface Reached {
  readonly panel: WalkPanel;
  readonly measured: Reading;
}

function judge(study: Study, side: Side): Finding[] {
  const { panels } = study.walk;
  const read = panels.flatMap((panel): Reached[] => {
    const measured = beyondBones(study, panel, side);
    return measured === null ? [] : [{ panel, measured }];
  });
  const unread = panels.filter((panel) => !read.some((one) => one.panel === panel));
  const remarks = read.flatMap((one) => remark(study, side, one));
  const needs = `the ${side} hip, knee and ankle marked in the side view`;
  const about = { check: "reach", side, panels: unread } as const;
  if (unread.length > 0 || panels.length === 0) return [...remarks, cannotTell(about, needs)];
  const vague = read.filter(({ measured }) => !(measured.plusMinus <= VAGUE_BEYOND));
  if (vague.length > 0) {
    const exactly = { ...about, panels: vague.map(({ panel }) => panel) };
    return [...remarks, cannotTell(exactly, `the ${side} hip and ankle marked more exactly`)];
  }
  if (remarks.length > 0) return remarks;
  const [farthest] = read.toSorted((a, b) => greatestFirst(a.measured.value, b.measured.value));
  return [sound({ ...about, panels }, farthest?.measured ?? null)];
}

/** How much farther than its bones reach an ankle is from its hip; null where that cannot be read. */
function beyondBones(study: Study, panel: WalkPanel, side: Side): Reading | null {
  const { thigh, shank } = trueLengths(study);
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

function remark(study: Study, side: Side, { panel, measured }: Reached): Remark[] {
  if (!clearlyBeyond(measured.value, measured.plusMinus, BEYOND_REACH)) return [];
  const passes = percent({ value: BEYOND_REACH, plusMinus: 0 });
  return [
    {
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
    },
  ];
}
