"use client";
import { useRef } from "react";
import type { View } from "../../lib/geometry";
import { movePicture, type PanelId, type PictureUnder } from "../../lib/sheet";
import type { Room } from "../_room";
import { reference as words } from "../_words";
import { useWorkspace, useWorkspaceStore } from "../_workspace";
import styles from "./reference.module.css";

const MOST_DIM = 0.95; // a picture that cannot be seen would be looked for
const STEP = 0.05;

export interface DimSliderProps {
  readonly room: Room;
  readonly panel: PanelId;
  readonly view: View;
  readonly picture: PictureUnder;
}

/** How far the paper covers the picture: seen while it slides, written when it is let go. */
export function DimSlider({ room, panel, view, picture }: DimSliderProps) {
  const workspace = useWorkspaceStore();
  const draft = useWorkspace(({ pictureDraft }) => pictureDraft);
  const slid = useRef<number | null>(null);
  const dim = draft?.panel === panel && draft.view === view ? draft.place.dim : picture.dim;
  const slide = (to: number) => {
    slid.current = to;
    workspace.getState().draftPicture({ panel, view, place: { ...picture, dim: to } });
  };
  const keep = () => {
    const to = slid.current;
    slid.current = null;
    if (to === null) return;
    if (to !== picture.dim) movePicture(room.drawing, panel, view, { dim: to });
    workspace.getState().draftPicture(null);
  };
  return (
    <label className={styles.slider}>
      <span>
        {words.dim}
        <b>{words.share(dim)}</b>
      </span>
      <input
        type="range"
        min={0}
        max={MOST_DIM}
        step={STEP}
        value={dim}
        aria-valuetext={words.share(dim)}
        onChange={(event) => slide(Number(event.currentTarget.value))}
        onPointerUp={keep}
        onKeyUp={keep}
        onBlur={keep}
      />
    </label>
  );
}
