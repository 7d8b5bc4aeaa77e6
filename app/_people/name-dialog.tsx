"use client";
import { type FormEvent, useEffect, useId, useRef, useState } from "react";
import { Button, Dialog } from "../_controls";
import type { Me } from "../_room";
import { common, people } from "../_words";
import { HuePicker } from "./hue-picker";
import styles from "./people-form.module.css";
import { NAME_LENGTH, readName } from "./read-name";

export interface NameDialogProps {
  readonly me: Me;
  readonly onKeep: (me: Me) => void;
  readonly onClose: () => void;
}

/** One's own name and hue, as the others see them. */
export function NameDialog({ me, onKeep, onClose }: NameDialogProps) {
  const [name, setName] = useState(me.name);
  const [hue, setHue] = useState(me.hue);
  const [missing, setMissing] = useState(false);
  const nameId = useId();
  const hintId = useId();
  const field = useRef<HTMLInputElement>(null);
  useEffect(() => field.current?.select(), []); // the name is what one comes here for
  const keep = (event: FormEvent) => {
    event.preventDefault();
    const read = readName(name);
    setMissing(read === null);
    if (read !== null) onKeep({ name: read, hue });
  };
  return (
    <Dialog title={people.name.title} closeLabel={common.cancel} onClose={onClose}>
      <form className={styles.form} onSubmit={keep} noValidate>
        <div className={styles.field}>
          <label htmlFor={nameId}>{people.name.name}</label>
          <input
            id={nameId}
            ref={field}
            className={styles.input}
            value={name}
            maxLength={NAME_LENGTH}
            autoComplete="nickname"
            aria-describedby={hintId}
            aria-invalid={missing}
            onChange={(event) => setName(event.target.value)}
          />
          <p id={hintId} className={missing ? styles.wrong : styles.hint}>
            {missing ? people.name.needed : people.name.hint}
          </p>
        </div>
        <HuePicker hue={hue} onPick={setHue} />
        <div className={styles.row}>
          <Button look="main" type="submit">
            {people.name.keep}
          </Button>
        </div>
      </form>
    </Dialog>
  );
}
