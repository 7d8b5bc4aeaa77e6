"use client";
import { useState } from "react";
import { sheetFileText } from "../../lib/sheet";
import { Button } from "../_controls";
import { type Told, useRoom, useStoreValue } from "../_room";
import { handover } from "../_words";
import { fileName } from "./file-name";
import { saveFile } from "./save-file";
import styles from "./told-note.module.css";
import { keptWords, lostWords } from "./told-words";

/** Says what became of work that the sheet did not take, and hands over what it could not keep. */
export function ToldNote() {
  const told = useStoreValue(useRoom().told);
  if (told === null) return null;
  return (
    <section className={styles.note} aria-label={handover.told.label}>
      <div role="alert">
        {told.why === "generation" && <p>{handover.told.putBack}</p>}
        <p>{keptWords(told)}</p>
        {lostWords(told.lost).map((words) => (
          <p key={words}>
            <b>{words}</b>
          </p>
        ))}
      </div>
      <Acts told={told} />
    </section>
  );
}

function Acts({ told }: { readonly told: Told }) {
  const room = useRoom();
  const [savedAs, setSavedAs] = useState<string | null>(null);
  const [asking, setAsking] = useState(false);
  const words = handover.told;
  if (told.lost.length === 0) {
    return (
      <Button small onClick={() => room.forgetTold()}>
        {words.close}
      </Button>
    );
  }
  const save = () => {
    const sheet = room.sheetWithLost();
    const name = fileName(words.file(sheet.head.title), ".heelstrip.json");
    saveFile(new Blob([sheetFileText(sheet)], { type: "application/json" }), name);
    setSavedAs(name);
  };
  return (
    <>
      <p role="status">{savedAs === null ? words.where : words.saved(savedAs)}</p>
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
          <Button small look="main" onClick={() => room.forgetTold()}>
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
