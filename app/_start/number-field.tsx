"use client";

export interface NumberFieldProps {
  readonly name: string;
  readonly label: string;
  readonly range: { readonly min: number; readonly max: number };
  readonly step?: number | "any";
  readonly initial?: number;
  readonly hint?: string;
  readonly onNumber?: (value: number) => void;
}

/** A number with its range; empty means its default. */
export function NumberField(props: NumberFieldProps) {
  const { name, label, range, step = 1, initial, hint, onNumber } = props;
  return (
    <label>
      {label}
      <input
        name={name}
        type="number"
        inputMode={step === 1 ? "numeric" : "decimal"}
        min={range.min}
        max={range.max}
        step={step}
        defaultValue={initial}
        placeholder={hint}
        title={hint}
        onChange={(event) => onNumber?.(event.currentTarget.valueAsNumber)}
      />
    </label>
  );
}
