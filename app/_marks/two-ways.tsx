"use client";
import { useId } from "react";
import styles from "./picker.module.css";

export interface TwoWaysProps<Way extends string> {
  readonly label: string;
  readonly ways: readonly { readonly way: Way; readonly name: string }[];
  readonly chosen: Way;
  readonly onChoose: (way: Way) => void;
  readonly hint?: string;
}

/** A choice of two that stand side by side. */
export function TwoWays<Way extends string>(props: TwoWaysProps<Way>) {
  const { label, ways, chosen, onChoose, hint } = props;
  const name = useId();
  return (
    <fieldset className={styles.ways} title={hint}>
      <legend>{label}</legend>
      <div>
        {ways.map(({ way, name: told }) => (
          <label key={way}>
            <input
              type="radio"
              name={name}
              value={way}
              checked={way === chosen}
              onChange={() => onChoose(way)}
            />
            <span>{told}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
