"use client";
import { useState } from "react";
import { type Person, useRoom, useStoreValue } from "../_room";
import { people } from "../_words";
import { Chip } from "./chip";
import { foldPeople } from "./fold-people";
import { Greeting } from "./greeting";
import { NameDialog } from "./name-dialog";
import { PencilSign } from "./pencil-sign";
import styles from "./people-bar.module.css";

/** Who is here: oneself first, as the way to one's own name, then the others. */
export function PeopleBar() {
  const room = useRoom();
  const me = useStoreValue(room.people.me);
  const called = useStoreValue(room.people.called);
  const others = useStoreValue(room.people.others);
  const [naming, setNaming] = useState(false);
  const { shown, folded } = foldPeople(others);
  return (
    <section className={styles.bar} aria-label={people.heading}>
      <div className={styles.meHold}>
        <button
          type="button"
          className={styles.me}
          aria-label={people.chipOfMe(called)}
          onClick={() => setNaming(true)}
        >
          <PencilSign hue={me.hue} className={styles.chipPencil} />
          <span className={styles.chipName}>{people.you}</span>
        </button>
        <Greeting
          called={called}
          onGive={() => setNaming(true)}
          onLater={() => room.people.rename(me)}
        />
      </div>
      {others.length > 0 && (
        <ul className={styles.others}>
          {shown.map((person) => (
            <li key={person.client}>
              <Chip name={person.name} hue={person.hue} />
            </li>
          ))}
        </ul>
      )}
      {folded.length > 0 && <FoldedPeople folded={folded} />}
      {naming && (
        <NameDialog
          me={me}
          onClose={() => setNaming(false)}
          onKeep={(next) => {
            room.people.rename(next);
            setNaming(false);
          }}
        />
      )}
    </section>
  );
}

function FoldedPeople({ folded }: { readonly folded: readonly Person[] }) {
  return (
    <details
      className={styles.folded}
      onBlur={({ currentTarget, relatedTarget }) => {
        if (!currentTarget.contains(relatedTarget)) currentTarget.open = false;
      }}
      onKeyDown={(event) => {
        if (event.key !== "Escape" || !event.currentTarget.open) return;
        event.stopPropagation();
        event.currentTarget.open = false;
      }}
    >
      <summary className={styles.count}>{people.others(folded.length)}</summary>
      <ul className={styles.foldedList}>
        {folded.map((person) => (
          <li key={person.client}>
            <Chip name={person.name} hue={person.hue} />
          </li>
        ))}
      </ul>
    </details>
  );
}
