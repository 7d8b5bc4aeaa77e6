"use client";
import { useMemo } from "react";
import type { Sheet } from "../../lib/sheet";
import { useMayDraw, useSheet } from "../_room";
import { type FixGhosts, ghostsOfFix, NO_GHOSTS } from "./ghosts-of-fix";
import { useShownFix } from "./use-shown-fix";

const whole = (sheet: Sheet) => sheet;

/** What the fix that is looked at would leave; nothing while none is, or where it may not be done. */
export function useFixGhosts(): FixGhosts {
  const shown = useShownFix();
  const mayDraw = useMayDraw();
  const sheet = useSheet(whole);
  const fix = mayDraw ? (shown?.fix ?? null) : null;
  return useMemo(() => (fix === null ? NO_GHOSTS : ghostsOfFix(sheet, fix)), [fix, sheet]);
}
