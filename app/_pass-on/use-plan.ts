"use client";
import { useMemo } from "react";
import type { PassOn, Sheet } from "../../lib/sheet";
import { useSheet } from "../_room";
import { useWorkspace } from "../_workspace";
import { type Asked, askedFor, planPassOn } from "./plan-pass-on";

export interface ShownPlan {
  readonly asked: Asked;
  readonly plan: PassOn;
}

const whole = (sheet: Sheet) => sheet;

/** What would be passed on to the panel in hand, kept up with the sheet; null when nothing is asked. */
export function usePlan(): ShownPlan | null {
  const sheet = useSheet(whole);
  const request = useWorkspace((workspace) => workspace.passOn);
  const panel = useWorkspace((workspace) => workspace.panel);
  return useMemo(() => {
    const asked = request === null ? null : askedFor(sheet, panel, request);
    if (asked === null || request === null) return null;
    return { asked, plan: planPassOn(sheet, request, asked) };
  }, [sheet, request, panel]);
}
