"use client";
import { useEffect, useState } from "react";
import type { PageChoice } from "../../lib/export";
import { useRoom } from "../_room";
import { handover } from "../_words";
import { drawPages, type Print } from "./draw-pages";
import { type LoadedPicture, loadPicture } from "./load-picture";
import { wasStopped, whyNoPreview } from "./print-error";
import { readSheet } from "./read-sheet";
import { today } from "./today";

export type Preview =
  | { readonly kind: "drawing"; readonly count: number | null }
  | { readonly kind: "picture"; readonly picture: HTMLImageElement; readonly count: number }
  | { readonly kind: "failed"; readonly why: string };

/**
 * One page as it will be printed, by its number from 1; the sheet as it stood when the page was chosen. One that
 * failed is asked for again with `again`.
 */
export function usePreview(page: PageChoice, number: number) {
  const room = useRoom();
  const [turn, setTurn] = useState(0);
  const [print, setPrint] = useState<Print | null>(null);
  const [preview, setPreview] = useState<Preview>({ kind: "drawing", count: null });

  // biome-ignore lint/correctness/useExhaustiveDependencies: another turn is the same question, asked again
  useEffect(() => {
    const stop = new AbortController();
    setPrint(null);
    setPreview({ kind: "drawing", count: null });
    const { signal } = stop;
    const lay = async () => {
      const read = await readSheet(room);
      signal.throwIfAborted();
      setPrint(await drawPages({ ...read, day: today(), page, signal, onStep: () => undefined }));
    };
    lay().catch((reason: unknown) => {
      if (!wasStopped(reason)) setPreview({ kind: "failed", why: whyNoPreview(reason) });
    });
    return () => stop.abort();
  }, [room, page, turn]);

  useEffect(() => {
    if (print === null) return;
    const stop = new AbortController();
    let loaded: LoadedPicture | null = null;
    const { count } = print;
    setPreview({ kind: "drawing", count });
    const show = async () => {
      const svg = await print.draw(Math.min(number, count));
      stop.signal.throwIfAborted();
      loaded = await loadPicture(svg, stop.signal);
      loaded.picture.alt = handover.preview(number, count);
      setPreview({ kind: "picture", picture: loaded.picture, count });
    };
    show().catch((reason: unknown) => {
      if (!wasStopped(reason)) setPreview({ kind: "failed", why: whyNoPreview(reason) });
    });
    return () => {
      stop.abort();
      loaded?.close();
    };
  }, [print, number]);
  return { preview, again: () => setTurn((before) => before + 1) };
}
