import { limbJoint, SIDES, type Side } from "../../body";
import { gathered } from "../../gathered";
import { clearlyBeyond, greatestOf } from "../beyond";
import type { Finding, Remark } from "../finding";
import { type FootPoint, footPoints, isWholeFoot, needsFoot } from "../foot";
import { PEELING, PEELING_LIMIT, SINK_LIMIT, SINK_SOURCE } from "../methods/sink";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";
import { capital, percent } from "../words";
import { cannotTell, sound } from "./answers";

/**
 * Does either foot go through the ground, whether it carries or swings?
 *
 * Shapes:  one answer for each foot of each panel
 * Units:   leg lengths under the ground line
 * Errors:  none; a foot without its heel, or its ball or toe, answers "cannot-tell"
 * Source:  beside the limit
 */
export function sink(study: Study): readonly Finding[] {
  return gathered(study.inPanels(inPanel), (told) => told);
}

function inPanel(study: Study, panel: WalkPanel): Finding[] {
  return SIDES.map((side) => judge(study, panel, side));
}

function judge(study: Study, panel: WalkPanel, side: Side): Finding {
  const { leg } = study;
  const about = { check: "sink", side, panels: [panel] } as const;
  if (leg.kind === "cannot-tell") return cannotTell(about, leg.needs);
  const points = footPoints(panel, side, leg);
  const heel = points.find(({ joint }) => joint === "heel") ?? null;
  const deepest = greatestOf(points, (one) => -one.y - one.plusMinus - limitOf(one, heel));
  const limit = deepest === undefined ? Number.NaN : limitOf(deepest, heel);
  if (deepest !== undefined && clearlyBeyond(-deepest.y, deepest.plusMinus, limit)) {
    return remark(study, { panel, side, point: deepest, limit });
  }
  if (deepest === undefined || !isWholeFoot(points)) return cannotTell(about, needsFoot(side));
  return sound(about, { value: -deepest.y, plusMinus: deepest.plusMinus, unit: "leg" });
}

function limitOf(point: FootPoint, heel: FootPoint | null): number {
  return heel !== null && clearlyBeyond(heel.y - point.y, 0, PEELING) ? PEELING_LIMIT : SINK_LIMIT;
}

interface Sunk {
  readonly panel: WalkPanel;
  readonly side: Side;
  readonly point: FootPoint;
  readonly limit: number;
}

function remark({ yardstick }: Study, { panel, side, point, limit }: Sunk): Remark {
  const measured = { value: -point.y, plusMinus: point.plusMinus, unit: "leg" } as const;
  return {
    kind: "remark",
    check: "sink",
    level: "shows",
    yardstick,
    side,
    panels: [panel.id],
    frames: [panel.frame],
    spots: [{ panel: panel.id, view: "side", joints: [limbJoint(side, point.joint)] }],
    measured,
    expected: { value: limit, plusMinus: 0, unit: "leg" },
    title: capital(`${side} foot sinks`),
    why: `At frame ${panel.frame} the ${side} ${point.joint} is ${percent(measured)} of a leg under the ground; up to ${percent({ value: limit, plusMinus: 0 })} passes as standing on it. The foot will be seen to go through the floor.`,
    source: SINK_SOURCE,
    beyond: (-point.y - limit) / limit,
  };
}
