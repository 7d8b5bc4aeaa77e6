"use client";
import { useEffect, useRef } from "react";
import type { View } from "../../lib/geometry";
import {
  movePicture,
  type Panel,
  type PictureUnder,
  putPicture,
  takePicture,
} from "../../lib/sheet";
import { Button } from "../_controls";
import { useSheet } from "../_room";
import { reference as words } from "../_words";
import { useWorkspace } from "../_workspace";
import { ChooseButton } from "./choose-button";
import { DimSlider } from "./dim-slider";
import type { Desk } from "./lay-pictures";
import { fitPicture } from "./place-picture";
import styles from "./reference.module.css";

export interface PictureActsProps {
  readonly desk: Desk;
  readonly panel: Panel;
  readonly view: View;
  readonly picture: PictureUnder;
}

/** The picture that lies there: dimmed, moved, fitted, put elsewhere too, changed, removed. */
export function PictureActs({ desk, panel, view, picture }: PictureActsProps) {
  const { room, workspace } = desk;
  const held = useWorkspace((now) => now.pictureHeld);
  const without = useSheet(
    ({ panels }) => panels.filter(({ pictures }) => pictures[view] === null).length,
  );
  const move = useRef<HTMLDivElement>(null);
  useGoBack(held, move);
  const { holdPicture, tellPicture, openPicture } = workspace.getState();
  const fit = () => {
    movePicture(room.drawing, panel.id, view, fitPicture(picture));
    tellPicture(words.fitted);
  };
  const putUnderAll = () => {
    const { panels } = room.sheet.getSnapshot();
    const bare = panels.filter(({ pictures }) => pictures[view] === null).map(({ id }) => id);
    putPicture(room.drawing, bare, view, picture);
    tellPicture(words.putMany(bare.length));
  };
  const remove = () => {
    takePicture(room.drawing, panel.id, view);
    openPicture(false);
    tellPicture(words.removed);
  };
  return (
    <>
      <DimSlider room={room} panel={panel.id} view={view} picture={picture} />
      <div ref={move} className={styles.pair}>
        <Button
          small
          aria-pressed={held}
          aria-label={held ? words.movingName : words.move}
          onClick={() => holdPicture(!held)}
        >
          {held ? words.moving : words.move}
        </Button>
        <Button small onClick={fit}>
          {words.fit}
        </Button>
      </div>
      <Button small disabled={without === 0} title={words.allHint} onClick={putUnderAll}>
        {words.all}
      </Button>
      <div className={styles.pair}>
        <ChooseButton desk={desk} spot={{ panel: panel.id, view }} aria-label={words.otherName}>
          {words.other}
        </ChooseButton>
        <Button small aria-label={words.removeName} onClick={remove}>
          {words.remove}
        </Button>
      </div>
    </>
  );
}

/** Moving ends on the paper, whose hold is gone then: the focus goes back to where it began. */
function useGoBack(held: boolean, move: { readonly current: HTMLElement | null }): void {
  const was = useRef(held);
  useEffect(() => {
    const lost = document.activeElement === null || document.activeElement === document.body;
    if (was.current && !held && lost) move.current?.querySelector("button")?.focus();
    was.current = held;
  }, [held, move]);
}
