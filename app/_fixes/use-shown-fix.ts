"use client";
import { useRef } from "react";
import type { Sheet } from "../../lib/sheet";
import { useReview, useSheet } from "../_room";
import { useWorkspace } from "../_workspace";
import { type ShownFix, shownFix } from "./shown-fix";

const whole = (sheet: Sheet) => sheet;

/** The fix that is looked at; it follows the sheet, and waits while the pen is down. */
export function useShownFix(): ShownFix | null {
  const fixing = useWorkspace((workspace) => workspace.fixing);
  const penDown = useWorkspace((workspace) => workspace.penDown);
  const sheet = useSheet(whole);
  const review = useReview();
  const held = useRef<ShownFix | null>(null);
  if (fixing === null) held.current = null;
  else if (!penDown) held.current = shownFix(sheet, review, fixing);
  return held.current;
}
