"use client";
import { type KeyboardEvent, useLayoutEffect, useRef } from "react";
import type { View } from "../../lib/geometry";
import type { Panel } from "../../lib/sheet";
import { Button } from "../_controls";
import { common, reference as words } from "../_words";
import { ChooseButton } from "./choose-button";
import type { Desk } from "./lay-pictures";
import { PictureActs } from "./picture-acts";
import styles from "./reference.module.css";

export interface PictureFormProps {
  readonly desk: Desk;
  /** The panel in hand, if there is one. */
  readonly panel: Panel | undefined;
  readonly view: View;
}

/** What can be done with the picture under the view in hand, or how to put one there. */
export function PictureForm({ desk, panel, view }: PictureFormProps) {
  const form = useRef<HTMLFieldSetElement>(null);
  useLayoutEffect(() => {
    form.current?.scrollIntoView({ block: "nearest", inline: "nearest" });
    form.current?.querySelector<HTMLElement>("input[type=range], button")?.focus();
  }, []);
  const press = (event: KeyboardEvent) => {
    if (event.key !== "Escape") return;
    event.preventDefault();
    desk.workspace.getState().openPicture(false);
  };
  const picture = panel?.pictures[view] ?? null;
  return (
    <fieldset ref={form} className={styles.form} aria-label={words.name} onKeyDown={press}>
      <p className={styles.where}>
        {panel === undefined
          ? words.noPanel
          : words.where(panel.frame, common.pose[panel.pose], common.view[view])}
      </p>
      {panel !== undefined && picture === null && (
        <>
          <ChooseButton desk={desk} spot={{ panel: panel.id, view }} look="main">
            {words.choose}
          </ChooseButton>
          <p className={styles.hint}>{words.orElse}</p>
        </>
      )}
      {panel !== undefined && picture !== null && (
        <PictureActs desk={desk} panel={panel} view={view} picture={picture} />
      )}
      <Button
        small
        className={styles.closer}
        onClick={() => desk.workspace.getState().openPicture(false)}
      >
        {common.close}
      </Button>
    </fieldset>
  );
}
