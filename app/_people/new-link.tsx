"use client";
import { useId, useRef, useState } from "react";
import type { LinkCreated } from "../../shared/api-answers";
import { Button } from "../_controls";
import { invite, people } from "../_words";
import { linkAddress } from "./link-address";
import styles from "./links.module.css";
import form from "./people-form.module.css";

export interface NewLinkProps {
  readonly sheetId: string;
  readonly made: LinkCreated;
}

/** A link just made, shown this once. */
export function NewLink({ sheetId, made }: NewLinkProps) {
  const [copied, setCopied] = useState<string | null>(null);
  const field = useRef<HTMLInputElement>(null);
  const id = useId();
  const address = linkAddress(location.origin, sheetId, made.secret);
  const copy = async () => {
    field.current?.select();
    try {
      await navigator.clipboard.writeText(address);
      setCopied(invite.copied);
    } catch {
      // Over plain http a browser shuts the clipboard: the selected text is the way that is left.
      setCopied(invite.copyByHand);
    }
  };
  return (
    <div className={styles.made}>
      <label htmlFor={id}>{invite.made(people.role[made.role])}</label>
      <div className={form.row}>
        <input
          id={id}
          ref={field}
          className={form.input}
          value={address}
          readOnly
          onFocus={(event) => event.target.select()}
        />
        <Button onClick={copy}>{invite.copy}</Button>
      </div>
      <p className={form.hint}>{invite.once}</p>
      <p role="status" className={form.hint}>
        {copied}
      </p>
    </div>
  );
}
