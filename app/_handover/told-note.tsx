"use client";
import { Button } from "../_controls";
import { useRoom, useStoreValue } from "../_room";
import { told as words } from "../_words";
import { LostActs } from "./lost-acts";
import styles from "./told-note.module.css";
import { keptWords, lostWords } from "./told-words";

/** Says what became of work that the sheet did not take, and hands over what it could not keep. */
export function ToldNote() {
  const room = useRoom();
  const told = useStoreValue(room.told);
  if (told === null) return null;
  const kept = keptWords(told);
  const forget = () => room.forgetTold();
  return (
    <section className={styles.note} aria-label={words.label}>
      <div role="alert">
        {told.why === "generation" && <p>{words.putBack}</p>}
        {kept !== "" && <p>{kept}</p>}
        {lostWords(told.lost).map(({ what, why }) => (
          <p key={why}>
            <b>{what}</b> {why}
          </p>
        ))}
      </div>
      {told.lost.length === 0 ? (
        <Button small onClick={forget}>
          {words.close}
        </Button>
      ) : (
        <LostActs sheet={() => room.sheetWithLost()} where={words.where} onForget={forget} />
      )}
    </section>
  );
}
