"use client";
import { useSyncExternalStore } from "react";

function subscribe(onChange: () => void): () => void {
  // The query names today's ratio, so it stops matching when the window moves to another screen.
  let query = matchMedia(`(resolution: ${devicePixelRatio}dppx)`);
  const changed = () => {
    query.removeEventListener("change", changed);
    query = matchMedia(`(resolution: ${devicePixelRatio}dppx)`);
    query.addEventListener("change", changed);
    onChange();
  };
  query.addEventListener("change", changed);
  return () => query.removeEventListener("change", changed);
}

/** Device pixels a CSS pixel, also after the window was moved or the page magnified. */
export function usePixelRatio(): number {
  return useSyncExternalStore(
    subscribe,
    () => devicePixelRatio,
    () => 1,
  );
}
