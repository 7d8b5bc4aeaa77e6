"use client";
import { useEffect, useRef, useState } from "react";
import { Row } from "../_controls";
import { useRoom } from "../_room";
import { passOn as words } from "../_words";
import { PASS_ONS, type PassOnDeed, useWorkspace, useWorkspaceStore } from "../_workspace";
import styles from "./pass-on.module.css";
import { PassOnForm } from "./pass-on-form";
import { placeFigure } from "./place-figure";

/** What can be passed on to the panel in hand, each shown as a ghost before it is done. */
export function PassOnGroup() {
  const room = useRoom();
  const workspace = useWorkspaceStore();
  const request = useWorkspace((workspace) => workspace.passOn);
  const passedOn = useWorkspace((workspace) => workspace.passedOn);
  const ask = useWorkspace((workspace) => workspace.askPassOn);
  const empty = useWorkspace((workspace) => workspace.panel === null);
  const [open, setOpen] = useState(false);
  const group = useRef<HTMLElement>(null);
  const goBackTo = useRef<PassOnDeed | null>(null);

  useEffect(() => {
    const deed = goBackTo.current;
    if (request !== null || deed === null) return;
    goBackTo.current = null;
    group.current?.querySelector<HTMLElement>(`[data-deed="${deed}"], [data-fold]`)?.focus();
  }, [request]);

  return (
    <section
      ref={group}
      className={styles.group}
      aria-labelledby="pass-on"
      data-asked={request !== null}
    >
      <h2 id="pass-on" className={styles.heading}>
        <Row
          className={styles.fold}
          sign={open || request !== null ? "▾" : "▸"}
          aria-expanded={open || request !== null}
          data-fold
          onClick={() => setOpen(!open)}
        >
          {words.name}
        </Row>
      </h2>
      {request !== null ? (
        <PassOnForm
          key={request.deed}
          request={request}
          onLeave={(hadFocus) => {
            if (hadFocus) goBackTo.current = request.deed;
          }}
        />
      ) : (
        open &&
        PASS_ONS.map((deed) => (
          <Row
            key={deed}
            hint={words.keys[deed]}
            data-deed={deed}
            disabled={empty}
            aria-describedby={empty ? "pass-on-told" : undefined}
            onClick={() => (deed === "figure" ? placeFigure(room, workspace) : ask(deed))}
          >
            {words.deeds[deed]}
          </Row>
        ))
      )}
      <p id="pass-on-told" className={styles.told} role="status">
        {passedOn !== null && `${words.done[passedOn]} ${words.undo}`}
        {passedOn === null && open && request === null && empty && words.noPanel}
      </p>
    </section>
  );
}
