"use client";
import { useId } from "react";
import { handover } from "../_words";
import styles from "./handover.module.css";
import { FORMATS, type PrintFormat } from "./print-format";

export interface FormatPickerProps {
  readonly format: PrintFormat;
  readonly onPick: (format: PrintFormat) => void;
}

const OFFERED = Object.keys(FORMATS) as readonly PrintFormat[];

/** As what kind of file the pages are made. */
export function FormatPicker({ format, onPick }: FormatPickerProps) {
  const name = useId();
  return (
    <fieldset className={styles.formats}>
      <legend>{handover.format}</legend>
      {OFFERED.map((offered) => (
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
