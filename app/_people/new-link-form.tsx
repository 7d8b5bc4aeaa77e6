"use client";
import { type FormEvent, useId, useState } from "react";
import type { Role } from "../../shared/role";
import { Button } from "../_controls";
import { invite, people } from "../_words";
import styles from "./people-form.module.css";

/** What an owner gives away as a rule. Another owner is a rarer wish, and the server's door takes it. */
const OFFERED = ["draw", "critique", "view"] as const satisfies readonly Role[];

export interface NewLinkFormProps {
  /** Answers whether the link was made; if not, the form keeps what was typed. */
  readonly onMake: (role: Role, label: string, expiresAt: number | null) => Promise<boolean>;
}

/** How long a link may be given away for, in days; 0 is for good. Our own choice, no source. */
const ENDS = [0, 1, 7, 30] as const;
const DAY_MS = 24 * 3600 * 1000;

export function NewLinkForm({ onMake }: NewLinkFormProps) {
  const [role, setRole] = useState<Role>("draw");
  const [label, setLabel] = useState("");
  const [days, setDays] = useState<number>(0);
  const [busy, setBusy] = useState(false);
  const labelId = useId();
  const endsId = useId();
  const group = useId();
  const make = async (event: FormEvent) => {
    event.preventDefault();
    setBusy(true);
    const made = await onMake(role, label.trim(), days === 0 ? null : Date.now() + days * DAY_MS);
    setBusy(false);
    if (made) setLabel("");
  };
  return (
    <form className={styles.form} onSubmit={make}>
      <fieldset className={styles.choices}>
        <legend>{invite.role}</legend>
        {OFFERED.map((offered) => (
          <label key={offered} className={styles.choice}>
            <input
              type="radio"
              name={group}
              value={offered}
              checked={role === offered}
              onChange={() => setRole(offered)}
            />
            <span>
              <b>{people.role[offered]}</b>
              <small>{invite.roleMay[offered]}</small>
            </span>
          </label>
        ))}
      </fieldset>
      <div className={styles.field}>
        <label htmlFor={labelId}>{invite.label}</label>
        <input
          id={labelId}
          className={styles.input}
          value={label}
          maxLength={60}
          placeholder={invite.labelHint}
          onChange={(event) => setLabel(event.target.value)}
        />
      </div>
      <div className={styles.field}>
        <label htmlFor={endsId}>{invite.ends}</label>
        <select
          id={endsId}
          className={styles.input}
          value={days}
          onChange={(event) => setDays(Number(event.target.value))}
        >
          {ENDS.map((count) => (
            <option key={count} value={count}>
              {invite.endsIn(count)}
            </option>
          ))}
        </select>
      </div>
      <div className={styles.row}>
        <Button look="main" type="submit" disabled={busy}>
          {busy ? invite.making : invite.make}
        </Button>
      </div>
    </form>
  );
}
