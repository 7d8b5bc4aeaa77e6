"use client";
import { type RefObject, useEffect, useState } from "react";

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** An element's inner size in CSS pixels, kept up to date; 0 × 0 before it is laid out. */
export function useSize(ref: RefObject<HTMLElement | null>): Size {
  const [size, setSize] = useState<Size>({ width: 0, height: 0 });
  useEffect(() => {
    const element = ref.current;
    if (element === null) return;
    const read = () => setSize({ width: element.clientWidth, height: element.clientHeight });
    const watcher = new ResizeObserver(read);
    watcher.observe(element);
    read();
    return () => watcher.disconnect();
  }, [ref]);
  return size;
}
