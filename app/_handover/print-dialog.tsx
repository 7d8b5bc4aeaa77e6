"use client";
import { useState } from "react";
import { Button, Dialog } from "../_controls";
import { common, handover } from "../_words";
import { FormatPicker } from "./format-picker";
import styles from "./handover.module.css";
import { choiceFor, PagePicker, type PageWish } from "./page-picker";
import { PagePreview } from "./page-preview";
import { PicturesLeftOut } from "./pictures-left-out";
import type { PrintFormat } from "./print-format";
import { PrintProgress } from "./print-progress";
import { usePreview } from "./use-preview";
import { usePrintJob } from "./use-print-job";

/** The annotated sheet: on which page, a look at it, and the files to hand over. */
export function PrintDialog({ onClose }: { readonly onClose: () => void }) {
  const [wish, setWish] = useState<PageWish>({ paper: "a4", orientation: "landscape" });
  const [format, setFormat] = useState<PrintFormat>("png-3840");
  const [number, setNumber] = useState(1);
  const page = choiceFor(wish);
  const { preview, again } = usePreview(page, number);
  const { state, start, stop } = usePrintJob();
  const making = state.kind === "making";
  const count = preview.kind === "failed" ? null : preview.count;
  const pick = (next: PageWish) => {
    setWish(next);
    setNumber(1);
  };
  return (
    <Dialog title={handover.title} closeLabel={common.close} onClose={onClose} wide>
      <div className={styles.print}>
        <PagePreview preview={preview} number={number} onTurn={setNumber} onAgain={again} />
        <div className={styles.act}>
          <PagePicker wish={wish} onPick={pick} />
          <FormatPicker format={format} onPick={setFormat} />
          <PicturesLeftOut from="print" />
          <div className={styles.row}>
            <Button
              look="main"
              disabled={making}
              onClick={() => void start({ page, format, only: null })}
            >
              {count !== null && count > 1 ? handover.downloadAll(count) : handover.download}
            </Button>
            {count !== null && count > 1 && (
              <Button disabled={making} onClick={() => void start({ page, format, only: number })}>
                {handover.downloadOnly(number)}
              </Button>
            )}
            {making && <Button onClick={stop}>{handover.stop}</Button>}
          </div>
          <PrintProgress state={state} />
        </div>
      </div>
    </Dialog>
  );
}
