"use client";
import { type RefObject, useEffect, useState } from "react";

const MARGIN = "120px"; // a paper about to be scrolled in is painted before it shows

/** Whether an element is on screen or nearly so. */
export function useOnScreen(ref: RefObject<Element | null>): boolean {
  const [onScreen, setOnScreen] = useState(false);
  useEffect(() => {
    const element = ref.current;
    if (element === null) return;
    const observer = new IntersectionObserver(
      (entries) => setOnScreen(entries.at(-1)?.isIntersecting ?? false),
      { rootMargin: MARGIN, scrollMargin: MARGIN }, // the window, and what scrolls inside it
    );
    observer.observe(element);
    return () => observer.disconnect();
  }, [ref]);
  return onScreen;
}
