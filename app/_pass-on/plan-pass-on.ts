import { PANEL, type Side } from "../../lib/body";
import { walkLegLength } from "../../lib/gait";
import {
  type BodyShift,
  bodyShift,
  footCopy,
  footOnPrint,
  type Panel,
  type PanelId,
  type PassOn,
  poseCopy,
  poseMirror,
  type Sheet,
} from "../../lib/sheet";
import type { PassOnRequest } from "../_workspace";
import { planFigure } from "./plan-figure";
import { usualSource } from "./usual-source";

/** A request with everything that was left open filled in. */
export interface Asked {
  readonly to: Panel;
  /** Null where there is no panel to take it from, or none is needed. */
  readonly from: Panel | null;
  readonly side: Side;
  readonly shift: BodyShift;
}

/** Fills a request in for the panel in hand; null when that has left the strip. */
export function askedFor(
  sheet: Sheet,
  panel: PanelId | null,
  request: PassOnRequest,
): Asked | null {
  const to = sheet.panels.find(({ id }) => id === panel);
  if (to === undefined) return null;
  const named = sheet.panels.find(({ id }) => id === request.from);
  const leg = walkLegLength(sheet);
  const units = leg.kind === "value" ? leg.value : PANEL.plainLeg;
  return {
    to,
    from: named ?? usualSource(sheet.panels, to, request.deed),
    side: request.side ?? to.weightOn ?? "left",
    shift: {
      forward: request.forward * units,
      up: request.up * units,
      aside: request.aside * units,
    },
  };
}

/** What a request would do, to be shown before it is done; or why it cannot be. */
export function planPassOn(sheet: Sheet, request: PassOnRequest, asked: Asked): PassOn {
  const { to, from, side, shift } = asked;
  if (request.deed === "figure") return planFigure(sheet, to);
  if (request.deed === "footprint") return footOnPrint(sheet, to.id, side);
  if (request.deed === "shift-body") return shifted(to, shift);
  if (from === null) return { kind: "cannot-tell", needs: "another panel with marks or ink" };
  if (request.deed === "copy-foot") return footCopy(from, to, { side, ink: request.ink });
  return request.deed === "copy-pose"
    ? poseCopy(from, to, request.ink)
    : poseMirror(from, to, request.ink);
}

function shifted(to: Panel, shift: BodyShift): PassOn {
  const plan = bodyShift(to, shift);
  const still = shift.forward === 0 && shift.up === 0 && shift.aside === 0;
  return still && plan.kind === "cannot" ? { kind: "cannot", why: "it is not moved yet" } : plan;
}
