"use client";
import { useId } from "react";
import { HUES } from "../_room";
import { people } from "../_words";
import { PencilSign } from "./pencil-sign";
import styles from "./people-form.module.css";

export interface HuePickerProps {
  readonly hue: number;
  readonly onPick: (hue: number) => void;
}

/** The hues as radio buttons with names: a colour alone says nothing to some. */
export function HuePicker({ hue, onPick }: HuePickerProps) {
  const name = useId();
  const kept: readonly number[] = HUES;
  const hues = kept.includes(hue) ? kept : [hue, ...kept]; // a hue of another day stays on offer
  return (
    <fieldset className={styles.hues}>
      <legend>{people.name.hue}</legend>
      {hues.map((degrees) => (
        <label key={degrees} className={styles.choice}>
          <input
            type="radio"
            name={name}
            value={degrees}
            checked={degrees === hue}
            onChange={() => onPick(degrees)}
          />
          <PencilSign hue={degrees} className={styles.huePencil} />
          <span>{people.hues[degrees] ?? people.hue(degrees)}</span>
        </label>
      ))}
    </fieldset>
  );
}
