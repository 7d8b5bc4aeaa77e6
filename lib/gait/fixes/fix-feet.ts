import type { Remark } from "../finding";
import type { Study } from "../study";
import { percent } from "../words";
import { moveBody, moveFoot } from "./move-pose";
import { movedPanel, type Proposal } from "./proposal";

/**
 * A foot over or under the ground: onto it, the knee solved. Where the leg does not reach down, the body
 * comes down with the foot.
 */
export function fixFeet(
  study: Study,
  { check, side, panels, measured }: Remark,
): readonly Proposal[] {
  const panel = study.walk.panels.find(({ id }) => id === panels[0]);
  const { leg } = study;
  if (panel === undefined || side === null || leg.kind === "cannot-tell") return [];
  const up = (check === "float" ? -1 : 1) * measured.value * leg.value;
  const title = `Put the ${side} foot on the ground`;
  const onGround = moveFoot(panel, side, { forward: 0, up });
  const [short] = onGround.short;
  if (short === undefined) return [movedPanel(panel, onGround, title, leg)];
  const lowered = moveFoot(moveBody(panel, { forward: 0, up: -short.by, aside: 0 }), side, {
    forward: 0,
    up,
  });
  const by = percent({ value: short.by / leg.value, plusMinus: 0 });
  return [
    movedPanel(panel, lowered, `${title} and lower the body by ${by} of a leg`, leg),
    movedPanel(panel, onGround, title, leg),
  ];
}
