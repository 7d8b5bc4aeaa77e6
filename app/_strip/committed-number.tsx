"use client";
import { type KeyboardEvent, useEffect, useState } from "react";

export interface CommittedNumberProps {
  readonly label: string;
  readonly value: number | null;
  readonly onCommit: (value: number | null) => void;
  readonly hint?: string;
  readonly least: number;
  readonly most: number;
  readonly step?: number;
  readonly mayBeEmpty?: boolean;
}

/** A number that is written when one is done with it, not at every key: one edit, one undo. */
export function CommittedNumber(props: CommittedNumberProps) {
  const { label, value, onCommit, hint, least, most, step = 1, mayBeEmpty = false } = props;
  const [typed, setTyped] = useState(shown(value));
  useEffect(() => setTyped(shown(value)), [value]);
  const commit = () => {
    const asked = typed.trim() === "" ? null : Number(typed);
    const usable = asked === null ? mayBeEmpty : Number.isFinite(asked);
    const number = asked === null ? null : Math.min(most, Math.max(least, asked));
    if (usable && typed !== shown(value)) onCommit(number);
    setTyped(shown(usable ? number : value));
  };
  const keys = (event: KeyboardEvent) => {
    if (event.key === "Enter") commit();
    if (event.key === "Escape") setTyped(shown(value));
  };
  return (
    <label title={hint}>
      {label}
      <input
        type="number"
        inputMode="decimal"
        min={least}
        max={most}
        step={step}
        value={typed}
        onChange={(event) => setTyped(event.currentTarget.value)}
        onBlur={commit}
        onKeyDown={keys}
      />
    </label>
  );
}

/** Three decimals: a thousandth of a leg is finer than anyone draws. */
const shown = (value: number | null): string =>
  value === null ? "" : `${Number(value.toFixed(3))}`;
