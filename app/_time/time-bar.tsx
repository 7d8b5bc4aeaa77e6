"use client";
import { type FormEvent, type KeyboardEvent, useId, useLayoutEffect, useRef } from "react";
import { evenOut, retime } from "../../lib/sheet";
import { Button } from "../_controls";
import { useRoom, useSheet } from "../_room";
import { time } from "../_words";
import { type Timing, useWorkspace } from "../_workspace";
import { stepChoices } from "./step-choices";
import { TempoFields } from "./tempo-fields";
import styles from "./time.module.css";
import { tellPlanned } from "./timing-words";
import { usePlanned } from "./use-planned";

/** What is proposed for the strip's times, under the strip; the ruler shows where feet would go. */
export function TimeBar() {
  const timing = useWorkspace((workspace) => workspace.timing);
  return timing === null ? null : <OpenBar key={timing.what} timing={timing} />;
}

function OpenBar({ timing }: { readonly timing: Timing }) {
  const room = useRoom();
  const sheet = useSheet((whole) => whole);
  const setTiming = useWorkspace((workspace) => workspace.setTiming);
  const planned = usePlanned();
  const saysId = useId();
  const form = useRef<HTMLFormElement>(null);
  useBorrowedFocus(form);
  const close = () => setTiming(null);
  const ready =
    planned?.kind === "plan" &&
    planned.plan.frames.size + Object.keys(planned.plan.head).length > 0;
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (!ready) return;
    if (timing.what === "even-out") evenOut(room.drawing, timing.scope);
    else retime(room.drawing, timing.tempo);
    close();
  };
  const keys = (event: KeyboardEvent) => {
    if (event.key !== "Escape") return;
    event.preventDefault();
    event.stopPropagation();
    close();
  };
  const name = timing.what === "even-out" ? time.evenOut : time.retime;
  return (
    <form ref={form} className={styles.bar} aria-label={name} onSubmit={submit} onKeyDown={keys}>
      <b>{name}</b>
      <ScopeChoice timing={timing} />
      {timing.what === "retime" && <TempoFields tempo={timing.tempo} describedBy={saysId} />}
      <output id={saysId} className={styles.says}>
        {planned !== null && tellPlanned(sheet, timing, planned)}
      </output>
      <span className={styles.acts}>
        <Button look="main" small type="submit" disabled={!ready}>
          {name}
        </Button>
        <Button small onClick={close}>
          {time.cancel}
        </Button>
      </span>
    </form>
  );
}

/** The bar takes the focus while it is open, and gives it back to where it was. */
function useBorrowedFocus(form: { readonly current: HTMLFormElement | null }): void {
  useLayoutEffect(() => {
    const lender = document.activeElement;
    form.current?.querySelector("select")?.focus();
    return () => {
      if (lender instanceof HTMLElement && lender.isConnected) lender.focus();
    };
  }, [form]);
}

/** Whole strip, or one step. */
function ScopeChoice({ timing }: { readonly timing: Timing }) {
  const sheet = useSheet((whole) => whole);
  const setTiming = useWorkspace((workspace) => workspace.setTiming);
  const scope = timing.what === "even-out" ? timing.scope : timing.tempo.scope;
  const steps = stepChoices(sheet);
  const choose = (id: string) => {
    const step = steps.find((candidate) => candidate.id === id);
    if (timing.what === "even-out") {
      setTiming({ what: "even-out", scope: step === undefined ? "strip" : { step: step.id } });
    } else if (step === undefined) {
      const { framesPerStep } = sheet.head;
      setTiming({ what: "retime", tempo: { scope: "strip", framesPerStep } });
    } else {
      setTiming({ what: "retime", tempo: { scope: { step: step.id }, frames: step.frames } });
    }
  };
  return (
    <select
      aria-label={time.what}
      value={scope === "strip" ? "" : scope.step}
      onChange={(event) => choose(event.currentTarget.value)}
    >
      <option value="">{time.wholeStrip}</option>
      {steps.map(({ id, name }) => (
        <option key={id} value={id}>
          {name}
        </option>
      ))}
    </select>
  );
}
