import { useEffect } from "react";
import { fetchPages } from "./fetch-page";

const SIGNS_OF_LIFE = ["pointermove", "pointerdown", "keydown"] as const;
const STANDS_MS = 2000; // by then the board stands; whoever only looks loses the line with them at hand

/**
 * Fetches the pages over the board once it stands, or somebody is at it: not before, and not when one is needed,
 * for the line may be down by then and the sheet's page is how unsaved ink is taken along.
 */
export function usePagesAhead(): void {
  useEffect(() => {
    const heard = new AbortController();
    const fetchThem = () => {
      heard.abort();
      clearTimeout(timer);
      fetchPages().catch(() => undefined); // they are fetched when one is asked for
    };
    const timer = setTimeout(fetchThem, STANDS_MS);
    for (const sign of SIGNS_OF_LIFE) {
      addEventListener(sign, fetchThem, { signal: heard.signal, passive: true });
    }
    return () => {
      heard.abort();
      clearTimeout(timer);
    };
  }, []);
}
