"use client";
import { useCallback, useEffect, useMemo, useRef } from "react";
import type { View } from "../../lib/geometry";
import type { Sheet } from "../../lib/sheet";
import { type BitmapSize, paintQueue } from "../_paper";
import { useSheet } from "../_room";
import { useWorkspace } from "../_workspace";
import styles from "./ink.module.css";
import { type OnionNeighbour, onionNeighbours } from "./onion-neighbours";
import { paintOnion } from "./paint-onion";

export interface OnionSkinProps {
  readonly panel: string;
  readonly view: View;
  readonly size: BitmapSize;
}

/** The neighbours of the panel in hand, seen through the paper. */
export function OnionSkin({ panel, view, size }: OnionSkinProps) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const skin = useWorkspace((workspace) => workspace.onionSkin);
  const panels = useSheet(useCallback((sheet: Sheet) => sheet.panels, []));
  const neighbours = useMemo(() => onionNeighbours({ panels }, panel, skin), [panels, panel, skin]);
  const shown = useRef<Shown | null>(null);
  useEffect(() => {
    const element = canvas.current;
    const next = { neighbours, view, size };
    // The list is new with every change of the sheet; what it shows seldom is.
    if (element === null || looksTheSame(shown.current, next)) return;
    shown.current = next;
    paintQueue.add(element, paintOnion(element, neighbours, view, size));
  }, [neighbours, view, size]);
  useEffect(() => {
    const element = canvas.current;
    return () => {
      if (element !== null) paintQueue.drop(element);
      shown.current = null;
    };
  }, []);
  return <canvas ref={canvas} className={`${styles.canvas} ${styles.onion}`} />;
}

interface Shown {
  readonly neighbours: readonly OnionNeighbour[];
  readonly view: View;
  readonly size: BitmapSize;
}

function looksTheSame(shown: Shown | null, { neighbours, view, size }: Shown): boolean {
  if (shown === null || shown.view !== view || shown.size !== size) return false;
  if (shown.neighbours.length !== neighbours.length) return false;
  return neighbours.every(({ panel, when }, index) => {
    const one = shown.neighbours[index];
    if (one === undefined || one.when !== when) return false;
    return one.panel.ink[view] === panel.ink[view] && one.panel.marks[view] === panel.marks[view];
  });
}
