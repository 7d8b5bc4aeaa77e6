"use client";
import {
  type FormEvent,
  type KeyboardEvent,
  useId,
  useLayoutEffect,
  useRef,
  useState,
} from "react";
import { purposeOf, type Remark, type Review, type ScopeKind } from "../../lib/gait";
import { keepOnPurpose } from "../../lib/sheet";
import { Button } from "../_controls";
import { freshEntryId, useMayCritique, useReview, useRoom } from "../_room";
import { common, purpose as words } from "../_words";
import { useWorkspaceStore } from "../_workspace";
import styles from "./purpose.module.css";

const SCOPES: readonly ScopeKind[] = ["panel", "side", "walk"];
const MOST_REASON = 500; // characters, as the sheet keeps it
const MOST_NAME = 40;

/** Keeps a remark on purpose: in which scope, and why, where one cares to say. */
export function KeepButton({ remark }: { readonly remark: Remark }) {
  const mayKeep = useMayCritique();
  const [open, setOpen] = useState(false);
  const button = useRef<HTMLButtonElement>(null);
  const wasOpen = useRef(false);
  useLayoutEffect(() => {
    if (wasOpen.current && !open) button.current?.focus();
    wasOpen.current = open;
  }, [open]);
  if (!mayKeep) return null;
  if (open) return <KeepForm remark={remark} onLeave={() => setOpen(false)} />;
  return (
    <Button
      ref={button}
      small
      aria-label={words.keepNamed(remark.title)}
      onClick={() => setOpen(true)}
    >
      {words.keep}
    </Button>
  );
}

interface KeepFormProps {
  readonly remark: Remark;
  readonly onLeave: () => void;
}

function KeepForm({ remark, onLeave }: KeepFormProps) {
  const room = useRoom();
  const workspace = useWorkspaceStore();
  const all = allRemarks(useReview());
  const scopes = SCOPES.filter((kind) => purposeOf(all, remark, kind) !== null);
  const [chosen, setChosen] = useState<ScopeKind>(scopes[0] ?? "walk");
  const [reason, setReason] = useState("");
  const name = useId();
  const keep = (event: FormEvent) => {
    event.preventDefault();
    const entry = purposeOf(all, remark, chosen);
    if (entry === null) return;
    const by = room.people.me.get().name.slice(0, MOST_NAME);
    keepOnPurpose(room.critique, { id: freshEntryId(), ...entry, reason: reason.trim(), by });
    workspace.getState().say(words.keptSaid(remark.title));
    onLeave();
  };
  const press = (event: KeyboardEvent) => {
    if (event.key !== "Escape") return;
    event.preventDefault();
    event.stopPropagation();
    onLeave();
  };
  return (
    <form className={styles.form} aria-label={words.keep} onSubmit={keep} onKeyDown={press}>
      <fieldset>
        <legend>{words.scope}</legend>
        {scopes.map((kind, index) => (
          <label key={kind}>
            <input
              type="radio"
              name={name}
              value={kind}
              checked={chosen === kind}
              ref={index === 0 ? focusOnce : undefined}
              onChange={() => setChosen(kind)}
            />
            {scopeWords(kind, remark)}
          </label>
        ))}
      </fieldset>
      <label className={styles.reason}>
        {words.reason}
        <input
          type="text"
          value={reason}
          maxLength={MOST_REASON}
          placeholder={words.reasonExample}
          onChange={(event) => setReason(event.currentTarget.value)}
        />
      </label>
      <div className={styles.pair}>
        <Button small look="main" type="submit">
          {words.keepIt}
        </Button>
        <Button small onClick={onLeave}>
          {common.cancel}
        </Button>
      </div>
    </form>
  );
}

function allRemarks(review: Review | null): readonly Remark[] {
  return review === null ? [] : [...review.remarks, ...review.kept.map(({ remark }) => remark)];
}

/** The form was just asked for: its first choice is what comes next. */
const focusOnce = (input: HTMLInputElement | null): void => input?.focus();

function scopeWords(kind: ScopeKind, { side }: Remark): string {
  if (kind === "panel") return words.scopes.panel;
  if (kind === "walk") return words.scopes.walk;
  return words.scopes.side(side === null ? "" : common.side[side]);
}
