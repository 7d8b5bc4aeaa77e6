"use client";
import { useMemo } from "react";
import { useSheet } from "../_room";
import { useWorkspace } from "../_workspace";
import { type Planned, planTiming } from "./timing-plan";

/** What the proposal of the moment would do; null while nothing is proposed. It follows the sheet. */
export function usePlanned(): Planned | null {
  const sheet = useSheet((whole) => whole);
  const timing = useWorkspace((workspace) => workspace.timing);
  return useMemo(() => (timing === null ? null : planTiming(sheet, timing)), [sheet, timing]);
}
