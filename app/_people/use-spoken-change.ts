"use client";
import { useEffect, useRef, useState } from "react";
import type { InkState, ShutCause } from "../_room";
import { isPassing, spokenChange } from "./ink-words";

/** A state that has stood for so long is told; a stroke that is kept a moment later was no trouble. */
const STANDS_MS = 700; // our own choice, no source

/** The last change of the ink's state that was worth saying aloud; empty until there is one. */
export function useSpokenChange(state: InkState, shutBy: ShutCause | null): string {
  const told = useRef(state);
  const [spoken, setSpoken] = useState("");
  useEffect(() => {
    const timer = setTimeout(() => {
      const said = spokenChange(told.current, state, shutBy);
      if (!isPassing(state)) told.current = state;
      if (said !== null) setSpoken(said);
    }, STANDS_MS);
    return () => clearTimeout(timer);
  }, [state, shutBy]);
  return spoken;
}
