import { useEffect } from "react";
import { fetchPages } from "./fetch-page";

const SIGNS_OF_LIFE = ["pointermove", "pointerdown", "keydown"] as const;

/** Fetches the pages over the board once somebody is at it: not before it stands, and not when it is needed. */
export function usePagesAhead(): void {
  useEffect(() => {
    const heard = new AbortController();
    const fetchThem = () => {
      heard.abort();
      fetchPages().catch(() => undefined); // they are fetched when one is asked for
    };
    for (const sign of SIGNS_OF_LIFE) {
      addEventListener(sign, fetchThem, { signal: heard.signal, passive: true });
    }
    return () => heard.abort();
  }, []);
}
