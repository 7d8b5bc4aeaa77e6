"use client";
import { useEffect, useRef, useState } from "react";
import type { PageChoice } from "../../lib/export";
import { useRoom } from "../_room";
import { handover } from "../_words";
import { fileName } from "./file-name";
import { wasStopped, whyNoFile } from "./print-error";
import { printFiles } from "./print-files";
import { FORMATS, type PrintFormat } from "./print-format";
import type { PrintStep } from "./print-step";
import { readSheet } from "./read-sheet";
import { saveFile } from "./save-file";
import { today } from "./today";

export type JobState =
  | { readonly kind: "idle" }
  | { readonly kind: "making"; readonly step: PrintStep }
  | { readonly kind: "said"; readonly words: string; readonly failed: boolean };

/** What is to be made. `only` is one page, counted from 1, or null for all. */
export interface JobWish {
  readonly page: PageChoice;
  readonly format: PrintFormat;
  readonly only: number | null;
}

/** Makes a print and hands its pages to the browser; one print at a time, and it can be stopped. */
export function usePrintJob() {
  const room = useRoom();
  const [state, setState] = useState<JobState>({ kind: "idle" });
  const running = useRef<AbortController | null>(null);
  useEffect(() => () => running.current?.abort(), []);

  const start = async ({ page, format, only }: JobWish) => {
    const stop = new AbortController();
    running.current = stop;
    const onStep = (step: PrintStep) => setState({ kind: "making", step });
    const saved: string[] = [];
    try {
      onStep({ stage: "layout" });
      const read = await readSheet(room);
      const { sheet } = read;
      const job = { ...read, day: today(), page, signal: stop.signal, onStep };
      for await (const { blob, number, count } of printFiles(job, format, only)) {
        stop.signal.throwIfAborted();
        const { extension } = FORMATS[format];
        const ending = count === 1 ? extension : `-${number}${extension}`;
        const name = fileName(sheet.head.title, ending);
        saveFile(blob, name);
        saved.push(name);
      }
      setState({ kind: "said", words: handover.done(saved), failed: false });
    } catch (reason) {
      const stopped = wasStopped(reason);
      const words = stopped ? handover.stopped(saved) : whyNoFile(reason);
      setState({ kind: "said", words, failed: !stopped });
    } finally {
      running.current = null;
    }
  };
  return { state, start, stop: () => running.current?.abort() };
}
