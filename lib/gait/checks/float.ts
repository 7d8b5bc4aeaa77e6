import { limbJoint, type Side } from "../../body";
import { gathered } from "../../gathered";
import { clearlyBeyond } from "../beyond";
import type { Finding, Remark } from "../finding";
import { bearingFeet, type FootPoint, footPoints, isWholeFoot, lowest, needsFoot } from "../foot";
import { FLOAT_LIMIT, FLOAT_SOURCE } from "../methods/float";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";
import { capital, percent } from "../words";
import { cannotTell, NEEDS_A_SIDE, sound } from "./answers";

/**
 * Does a foot that carries weight stand on the ground? Asked of both feet at the stand and at a
 * contact, else of the one that carries, by its lowest mark.
 *
 * Shapes:  one answer for each bearing foot of each panel
 * Units:   leg lengths over the ground line
 * Errors:  none; a foot without its heel, or its ball or toe, answers "cannot-tell"
 * Source:  beside the limit
 */
export function float(study: Study): readonly Finding[] {
  return gathered(study.inPanels(inPanel), (told) => told);
}

function inPanel(study: Study, panel: WalkPanel): Finding[] {
  const feet = bearingFeet(panel);
  if (feet !== null) return feet.map((side) => judge(study, panel, side));
  const unsaid = panel.pose !== "breakdown" && panel.pose !== "lead-in";
  const about = { check: "float", side: null, panels: [panel] } as const;
  return unsaid ? [cannotTell(about, NEEDS_A_SIDE)] : [];
}

function judge(study: Study, panel: WalkPanel, side: Side): Finding {
  const { leg } = study;
  const about = { check: "float", side, panels: [panel] } as const;
  if (leg.kind === "cannot-tell") return cannotTell(about, leg.needs);
  const points = footPoints(panel, side, leg);
  const low = lowest(points);
  if (low === null || !isWholeFoot(points)) return cannotTell(about, needsFoot(side));
  const measured = { value: low.y, plusMinus: low.plusMinus, unit: "leg" } as const;
  if (!clearlyBeyond(low.y, low.plusMinus, FLOAT_LIMIT)) return sound(about, measured);
  return remark(study, panel, side, low);
}

function remark(study: Study, panel: WalkPanel, side: Side, low: FootPoint): Remark {
  const measured = { value: low.y, plusMinus: low.plusMinus, unit: "leg" } as const;
  const joints = [limbJoint(side, low.joint)];
  return {
    kind: "remark",
    check: "float",
    level: "shows",
    yardstick: study.yardstick,
    side,
    panels: [panel.id],
    frames: [panel.frame],
    spots: [{ panel: panel.id, view: "side", joints }],
    measured,
    expected: { value: FLOAT_LIMIT, plusMinus: 0, unit: "leg" },
    title: capital(`${side} foot floats`),
    why: `At frame ${panel.frame} the ${side} foot bears weight, and its lowest mark, the ${low.joint}, is ${percent(measured)} of a leg above the ground; up to ${percent({ value: FLOAT_LIMIT, plusMinus: 0 })} passes as standing on it. The foot will be seen to hover.`,
    source: FLOAT_SOURCE,
    beyond: (low.y - FLOAT_LIMIT) / FLOAT_LIMIT,
  };
}
