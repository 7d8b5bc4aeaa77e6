"use client";
import { useMemo } from "react";
import type { Frame } from "../../lib/motion";
import type { PanelId } from "../../lib/sheet";
import { usePlanned } from "./use-planned";

const NONE: ReadonlyMap<PanelId, Frame> = new Map();

/** Frames that panels would move to, by id: what the ruler shows before it is done. */
export function useFeetToBe(): ReadonlyMap<PanelId, Frame> {
  const planned = usePlanned();
  return useMemo(() => (planned?.kind === "plan" ? planned.plan.frames : NONE), [planned]);
}
