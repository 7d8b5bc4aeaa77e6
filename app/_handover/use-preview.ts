"use client";
import { useEffect, useState } from "react";
import { useRoom } from "../_room";
import { handover } from "../_words";
import { type LoadedPicture, loadPicture } from "./load-picture";
import { wasStopped, whyNoPreview } from "./print-error";
import { sheetPicture } from "./print-sheet";
import { today } from "./today";

export type Preview =
  | { readonly kind: "drawing" }
  | { readonly kind: "picture"; readonly picture: HTMLImageElement }
  | { readonly kind: "failed"; readonly why: string };

/** The sheet as it will be printed, as it stood when the dialog was opened. */
export function usePreview(): Preview {
  const room = useRoom();
  const [preview, setPreview] = useState<Preview>({ kind: "drawing" });
  useEffect(() => {
    const stop = new AbortController();
    let loaded: LoadedPicture | null = null;
    const draw = async () => {
      try {
        const svg = await sheetPicture({
          sheet: room.sheet.getSnapshot(),
          review: room.review.get(),
          date: today(),
          signal: stop.signal,
          onStage: () => undefined,
        });
        loaded = await loadPicture(svg, stop.signal);
        loaded.picture.alt = handover.preview;
        setPreview({ kind: "picture", picture: loaded.picture });
      } catch (reason) {
        if (!wasStopped(reason)) setPreview({ kind: "failed", why: whyNoPreview(reason) });
      }
    };
    void draw();
    return () => {
      stop.abort();
      loaded?.close();
    };
  }, [room]);
  return preview;
}
