"use client";
import { useState } from "react";
import { type HandedSheet, sheetFileText } from "../../lib/sheet";
import { Button } from "../_controls";
import { told as words } from "../_words";
import { fileName } from "./file-name";
import { saveFile } from "./save-file";
import styles from "./told-note.module.css";

export interface LostActsProps {
  /** The sheet with what is lost to it. */
  readonly sheet: () => HandedSheet;
  /** Where it lies until then, and what becomes of it. */
  readonly where: string;
  readonly onForget: () => void;
}

/** What one can do with work that the hub never had: save it as a file, or throw it away, asked twice. */
export function LostActs({ sheet, where, onForget }: LostActsProps) {
  const [savedAs, setSavedAs] = useState<string | null>(null);
  const [asking, setAsking] = useState(false);
  const save = () => {
    const handed = sheet();
    const name = fileName(words.file(handed.head.title), ".heelstrip.json");
    saveFile(new Blob([sheetFileText(handed)], { type: "application/json" }), name);
    setSavedAs(name);
  };
  return (
    <>
      <p role="status">{savedAs === null ? where : words.saved(savedAs)}</p>
      <div className={styles.acts}>
        <Button small look="main" onClick={save}>
          {words.save}
        </Button>
        {!asking && (
          <Button small onClick={() => setAsking(true)}>
            {words.forget}
          </Button>
        )}
      </div>
      {asking && (
        <fieldset className={styles.ask}>
          <legend>{words.forgetAsk}</legend>
          <Button small look="main" onClick={onForget}>
            {words.forgetYes}
          </Button>
          <Button small autoFocus onClick={() => setAsking(false)}>
            {words.forgetNo}
          </Button>
        </fieldset>
      )}
    </>
  );
}
