"use client";
import { useMemo, useSyncExternalStore } from "react";
import type { View } from "../../lib/geometry";
import type { PanelId } from "../../lib/sheet";
import { type Person, type Store, useRoom } from "../_room";
import { NO_PENCILS, type Pencil, pencilsOn } from "./pencils-on";

/**
 * The others' pencils on one paper. Presence changes up to thirty times a second for every person,
 * so a paper that none of them points at, or where none has moved, keeps its list and is not
 * repainted.
 */
export function usePencils(panel: PanelId, view: View): readonly Pencil[] {
  const { others } = useRoom().people;
  const read = useMemo(() => pencilReader(others, { panel, view }), [others, panel, view]);
  return useSyncExternalStore(others.subscribe, read, read);
}

/** Reads one paper's pencils; the same list until something on this paper differs. */
function pencilReader(
  others: Store<readonly Person[]>,
  paper: { readonly panel: PanelId; readonly view: View },
): () => readonly Pencil[] {
  let seen: readonly Person[] | null = null;
  let pencils = NO_PENCILS;
  return () => {
    const now = others.get();
    if (now !== seen) pencils = pencilsOn(now, paper, pencils);
    seen = now;
    return pencils;
  };
}
