import {
  copyFoot,
  copyPose,
  footOnFootprint,
  mirrorPose,
  type PassOn,
  type Sheet,
  shiftBody,
} from "../../lib/sheet";
import { freshStrokeId, type Room } from "../_room";
import type { PassOnRequest, WorkspaceStore } from "../_workspace";
import { putFigure } from "./plan-figure";
import { type Asked, askedFor } from "./plan-pass-on";

/**
 * Does what is shown as a ghost: one verb, one step of undo. Answers whether it was done; what cannot
 * be done stays shown with its reason.
 */
export function doPassOn(room: Room, workspace: WorkspaceStore): boolean {
  const { passOn, panel, leavePassOn } = workspace.getState();
  if (passOn === null) return false;
  const sheet = room.sheet.getSnapshot();
  const asked = askedFor(sheet, panel, passOn);
  if (asked === null || done(room, sheet, passOn, asked).kind !== "passing") return false;
  leavePassOn(passOn.deed);
  if (passOn.deed === "figure") workspace.getState().fit(asked.to.id);
  return true;
}

function done(room: Room, sheet: Sheet, { deed, ink }: PassOnRequest, asked: Asked): PassOn {
  const { drawing } = room;
  const { to, from, side, shift } = asked;
  const withInk = { ink, newId: freshStrokeId };
  if (deed === "figure") return putFigure(room, sheet, to);
  if (deed === "footprint") return footOnFootprint(drawing, sheet, to.id, side);
  if (deed === "shift-body") return shiftBody(drawing, to, shift);
  if (from === null) return { kind: "cannot-tell", needs: "another panel" };
  if (deed === "copy-foot") return copyFoot(drawing, from, to, { ...withInk, side });
  return deed === "copy-pose"
    ? copyPose(drawing, from, to, withInk)
    : mirrorPose(drawing, from, to, withInk);
}
