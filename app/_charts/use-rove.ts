"use client";
import type { KeyboardEvent } from "react";

/** Something on a chart that keys can come to. */
export interface RoveStop {
  readonly key: string;
  readonly panel: string;
  /** Stops of one row follow each other; up and down go to the row above or below. */
  readonly row: string;
}

/**
 * One stop for Tab on a whole chart, and arrow keys within it: left and right along a row, up and down
 * between rows, Home and End to a row's ends. Tab comes to the panel in hand, else to the first.
 */
export function useRove(stops: readonly RoveStop[], inHand: string | null) {
  const entry = stops.find(({ panel }) => panel === inHand) ?? stops[0];
  const onKeyDown = (event: KeyboardEvent<HTMLElement>) => {
    if (event.altKey || event.ctrlKey || event.metaKey || event.shiftKey) return;
    const here = (event.target as HTMLElement).dataset.rove;
    const at = stops.find(({ key }) => key === here);
    const to = at === undefined ? null : stopAfter(stops, at, event.key);
    if (to === null) return;
    event.preventDefault();
    event.stopPropagation();
    const wanted = `[data-rove="${CSS.escape(to.key)}"]`;
    event.currentTarget.querySelector<HTMLElement>(wanted)?.focus();
  };
  return {
    group: { onKeyDown },
    stop: (key: string) => ({ "data-rove": key, tabIndex: key === entry?.key ? 0 : -1 }),
  };
}

/** Where a key goes from a stop; the stop itself at an end, null for keys that mean nothing here. */
export function stopAfter(stops: readonly RoveStop[], at: RoveStop, key: string): RoveStop | null {
  const row = stops.filter((stop) => stop.row === at.row);
  const index = row.indexOf(at);
  if (key === "ArrowRight") return row[index + 1] ?? at;
  if (key === "ArrowLeft") return row[index - 1] ?? at;
  if (key === "Home") return row[0] ?? at;
  if (key === "End") return row.at(-1) ?? at;
  if (key !== "ArrowUp" && key !== "ArrowDown") return null;
  const rows = [...new Set(stops.map((stop) => stop.row))];
  if (rows.length < 2) return null;
  const other = rows[rows.indexOf(at.row) + (key === "ArrowDown" ? 1 : -1)];
  return stops.find((stop) => stop.row === other && stop.panel === at.panel) ?? at;
}
