"use client";
import { useState } from "react";
import type { InkState, ShutCause } from "../_room";
import { spokenChange } from "./ink-words";

/** The last change of the ink's state that was worth saying aloud; empty until there is one. */
export function useSpokenChange(state: InkState, shutBy: ShutCause | null): string {
  const [before, setBefore] = useState(state);
  const [spoken, setSpoken] = useState("");
  if (before !== state) {
    setBefore(state);
    const said = spokenChange(before, state, shutBy);
    if (said !== null) setSpoken(said);
  }
  return spoken;
}
