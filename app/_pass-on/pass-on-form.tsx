"use client";
import { type KeyboardEvent, useId, useLayoutEffect, useRef } from "react";
import { SIDES } from "../../lib/body";
import type { Sheet } from "../../lib/sheet";
import { Button, Choice } from "../_controls";
import { useRoom, useSheet } from "../_room";
import { common, passOn as words } from "../_words";
import { type PassOnRequest, useWorkspace, useWorkspaceStore } from "../_workspace";
import { doPassOn } from "./do-pass-on";
import styles from "./pass-on.module.css";
import { ShiftFields } from "./shift-fields";
import { type ShownPlan, usePlan } from "./use-plan";

export interface PassOnFormProps {
  readonly request: PassOnRequest;
  /** Told before the form leaves, whether the focus was in it. */
  readonly onLeave: (hadFocus: boolean) => void;
}

/** What is about to be passed on: from where, what of it, and the two ways out. */
export function PassOnForm({ request, onLeave }: PassOnFormProps) {
  const room = useRoom();
  const workspace = useWorkspaceStore();
  const form = useRef<HTMLFieldSetElement>(null);
  const shown = usePlan();
  const told = useId();
  const ready = shown?.plan.kind === "passing";

  useFirstFocus(form, request.deed);
  const hadFocus = () => form.current?.contains(document.activeElement) ?? false;
  const doIt = () => {
    const focused = hadFocus();
    if (doPassOn(room, workspace)) onLeave(focused);
  };
  const leaveIt = () => {
    onLeave(hadFocus());
    workspace.getState().leavePassOn();
  };
  const press = (event: KeyboardEvent) => {
    const onButton = event.target instanceof HTMLButtonElement;
    if (event.key === "Enter" && !onButton) doIt();
    else if (event.key === "Escape") leaveIt();
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  return (
    <fieldset
      ref={form}
      className={styles.form}
      aria-label={words.deeds[request.deed]}
      onKeyDown={press}
    >
      <p className={styles.deed} aria-hidden="true">
        {words.deeds[request.deed]}
      </p>
      {request.deed === "shift-body" && <ShiftFields request={request} />}
      {request.deed !== "shift-body" && request.deed !== "figure" && (
        <SourceFields request={request} shown={shown} />
      )}
      <p id={told} className={styles.told} role="status">
        {tellPlan(shown)}
      </p>
      <div className={styles.pair}>
        <Button
          small
          look="main"
          disabled={!ready}
          aria-describedby={told}
          data-first={ready}
          onClick={doIt}
        >
          {words.doIt}
        </Button>
        <Button small onClick={leaveIt} data-first={!ready}>
          {words.leaveIt}
        </Button>
      </div>
    </fieldset>
  );
}

/** The focus goes to what is done next: the body's height is set, all else only confirmed. */
function useFirstFocus(form: { readonly current: HTMLElement | null }, deed: string): void {
  useLayoutEffect(() => {
    form.current?.scrollIntoView({ block: "nearest", inline: "nearest" });
    const first = deed === "shift-body" ? "input" : "[data-first=true]";
    form.current?.querySelector<HTMLElement>(first)?.focus();
  }, [form, deed]);
}

function tellPlan(shown: ShownPlan | null): string {
  if (shown === null) return words.noPanel;
  const { plan, asked } = shown;
  if (plan.kind === "passing") return words.ready(asked.to.frame);
  return plan.kind === "cannot" ? words.cannot(plan.why) : words.needs(plan.needs);
}

interface SourceFieldsProps {
  readonly request: PassOnRequest;
  readonly shown: ShownPlan | null;
}

const NOWHERE = { value: "", words: "" };
const panelsOf = (sheet: Sheet) => sheet.panels;

function SourceFields({ request, shown }: SourceFieldsProps) {
  const panels = useSheet(panelsOf);
  const change = useWorkspace((workspace) => workspace.changePassOn);
  const { deed, ink } = request;
  const sources = panels
    .filter(({ id }) => id !== shown?.asked.to.id)
    .map(({ id, frame, pose, weightOn }) => ({
      value: id,
      words: words.panel(frame, common.pose[pose], weightOn === null ? "" : common.side[weightOn]),
    }));
  return (
    <>
      {deed !== "footprint" && (
        <Choice
          label={words.from}
          value={shown?.asked.from?.id ?? ""}
          options={[...(shown?.asked.from === null ? [NOWHERE] : []), ...sources]}
          onChoose={(from) => change({ from })}
        />
      )}
      {(deed === "copy-foot" || deed === "footprint") && (
        <Choice
          label={words.foot}
          value={shown?.asked.side ?? "left"}
          options={SIDES.map((side) => ({ value: side, words: common.side[side] }))}
          onChoose={(side) => change({ side })}
        />
      )}
      {deed !== "footprint" && (
        <label className={styles.check}>
          <input
            type="checkbox"
            checked={ink}
            onChange={(event) => change({ ink: event.currentTarget.checked })}
          />
          {words.ink}
        </label>
      )}
    </>
  );
}
