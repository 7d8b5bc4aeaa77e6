"use client";
import styles from "./choice.module.css";

export interface ChoiceProps<V extends string> {
  readonly label: string;
  readonly value: V;
  readonly options: readonly { readonly value: V; readonly words: string }[];
  readonly onChoose: (value: V) => void;
}

/** One of several, under its name. */
export function Choice<V extends string>({ label, value, options, onChoose }: ChoiceProps<V>) {
  return (
    <label className={styles.choice}>
      {label}
      <select
        value={value}
        onChange={(event) => {
          const chosen = options.find((option) => option.value === event.currentTarget.value);
          if (chosen !== undefined) onChoose(chosen.value);
        }}
      >
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.words}
          </option>
        ))}
      </select>
    </label>
  );
}
