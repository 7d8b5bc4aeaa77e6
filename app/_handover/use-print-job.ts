"use client";
import { useEffect, useRef, useState } from "react";
import { useRoom } from "../_room";
import { handover } from "../_words";
import { fileName } from "./file-name";
import { wasStopped, whyNoFile } from "./print-error";
import { extensionOf, type PrintFormat, type PrintStage, printSheet } from "./print-sheet";
import { saveFile } from "./save-file";
import { today } from "./today";

export type JobState =
  | { readonly kind: "idle" }
  | { readonly kind: "making"; readonly stage: PrintStage }
  | { readonly kind: "said"; readonly words: string; readonly failed: boolean };

/** Makes a print and hands it to the browser; one at a time, and it can be stopped. */
export function usePrintJob() {
  const room = useRoom();
  const [state, setState] = useState<JobState>({ kind: "idle" });
  const running = useRef<AbortController | null>(null);
  useEffect(() => () => running.current?.abort(), []);

  const start = async (format: PrintFormat) => {
    const stop = new AbortController();
    running.current = stop;
    const sheet = room.sheet.getSnapshot();
    const name = fileName(sheet.head.title, extensionOf(format));
    try {
      const onStage = (stage: PrintStage) => setState({ kind: "making", stage });
      const review = room.review.get();
      const job = { sheet, review, date: today(), signal: stop.signal, onStage };
      saveFile(await printSheet(job, format), name);
      setState({ kind: "said", words: handover.done(name), failed: false });
    } catch (reason) {
      const stopped = wasStopped(reason);
      const words = stopped ? handover.stopped : whyNoFile(reason);
      setState({ kind: "said", words, failed: !stopped });
    } finally {
      running.current = null;
    }
  };
  return { state, start, stop: () => running.current?.abort() };
}
