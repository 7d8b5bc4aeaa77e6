"use client";
import { useId, useState } from "react";
import { Button, Dialog } from "../_controls";
import { common, handover } from "../_words";
import styles from "./handover.module.css";
import { PicturesLeftOut } from "./pictures-left-out";
import type { PrintFormat } from "./print-sheet";
import { usePreview } from "./use-preview";
import { usePrintJob } from "./use-print-job";

const FORMATS = ["png-1920", "png-3840", "svg"] as const satisfies readonly PrintFormat[];

/** The annotated sheet: a look at it, and the file to hand over. */
export function PrintDialog({ onClose }: { readonly onClose: () => void }) {
  const [format, setFormat] = useState<PrintFormat>("png-1920");
  const { state, start, stop } = usePrintJob();
  const making = state.kind === "making";
  return (
    <Dialog title={handover.title} closeLabel={common.close} onClose={onClose} wide>
      <div className={styles.print}>
        <PreviewPicture />
        <div className={styles.act}>
          <FormatPicker format={format} onPick={setFormat} />
          <PicturesLeftOut from="print" />
          <div className={styles.row}>
            <Button look="main" disabled={making} onClick={() => void start(format)}>
              {handover.download}
            </Button>
            {making && <Button onClick={stop}>{handover.stop}</Button>}
          </div>
          <p
            role="status"
            className={styles.said}
            data-failed={state.kind === "said" && state.failed}
          >
            {state.kind === "making" && handover.making[state.stage]}
            {state.kind === "said" && state.words}
          </p>
        </div>
      </div>
    </Dialog>
  );
}

function PreviewPicture() {
  const preview = usePreview();
  return (
    <div className={styles.preview}>
      {preview.kind === "drawing" && <p>{handover.drawing}</p>}
      {preview.kind === "failed" && <p role="alert">{preview.why}</p>}
      {preview.kind === "picture" && (
        <div ref={(place) => place?.replaceChildren(preview.picture)} />
      )}
    </div>
  );
}

interface FormatPickerProps {
  readonly format: PrintFormat;
  readonly onPick: (format: PrintFormat) => void;
}

function FormatPicker({ format, onPick }: FormatPickerProps) {
  const name = useId();
  return (
    <fieldset className={styles.formats}>
      <legend>{handover.format}</legend>
      {FORMATS.map((offered) => (
        <label key={offered}>
          <input
            type="radio"
            name={name}
            value={offered}
            checked={offered === format}
            onChange={() => onPick(offered)}
          />
          <span>
            <b>{handover.formats[offered].name}</b>
            <small>{handover.formats[offered].hint}</small>
          </span>
        </label>
      ))}
    </fieldset>
  );
}
