"use client";
import { type KeyboardEvent, memo, useEffect, useRef } from "react";
import { PANEL } from "../../lib/body";
import { movePicture, type PicturePlace, type PictureUnder, takePicture } from "../../lib/sheet";
import { useRoom } from "../_room";
import { reference as words } from "../_words";
import { type LayerProps, useWorkspace, useWorkspaceStore } from "../_workspace";
import { followHolds } from "./follow-holds";
import { middleOf, movePlace, scalePlace } from "./place-picture";
import styles from "./reference.module.css";

/** Over the paper in hand while its picture is moved: pens, fingers and keys hold the picture. */
export const PictureMover = memo(function PictureMover(props: LayerProps) {
  const { panel, view, mayDraw } = props;
  const held = useWorkspace(
    (now) => now.pictureHeld && now.panel === panel.id && now.view === view,
  );
  const picture = panel.pictures[view];
  if (!held || !mayDraw || picture === null) return null;
  return <Mover {...props} picture={picture} />;
});

interface MoverProps extends LayerProps {
  readonly picture: PictureUnder;
}

function Mover({ panel, view, picture }: MoverProps) {
  const grip = useRef<HTMLButtonElement>(null);
  const { drawing } = useRoom();
  const workspace = useWorkspaceStore();
  const draft = useWorkspace(({ pictureDraft }) => pictureDraft);
  const { id } = panel;
  const place: PicturePlace = draft?.panel === id && draft.view === view ? draft.place : picture;
  const now = useRef(picture);
  now.current = picture;

  useEffect(() => {
    const element = grip.current;
    if (element === null) return;
    element.focus({ preventScroll: true });
    const { draftPicture } = workspace.getState();
    const letGo = followHolds(element, {
      place: () => now.current,
      show: (shown) => draftPicture({ panel: id, view, place: shown }),
      keep: (kept) => {
        movePicture(drawing, id, view, kept);
        draftPicture(null);
      },
      leave: () => draftPicture(null),
    });
    return letGo;
  }, [drawing, workspace, id, view]);

  const press = (event: KeyboardEvent) => {
    const moved = keyMoved(event, picture);
    if (moved !== null) movePicture(drawing, id, view, moved);
    else if (event.key === "Delete" || event.key === "Backspace") takePicture(drawing, id, view);
    else if (!LEAVES.includes(event.key)) return;
    else workspace.getState().holdPicture(false);
    event.preventDefault();
  };
  const corner = { x: place.x + place.width, y: place.y + place.height };
  return (
    <button
      ref={grip}
      type="button"
      className={styles.grip}
      aria-label={words.grip}
      data-own-fingers
      onKeyDown={press}
    >
      <span className={styles.edge} style={boxOf(place)} />
      <span
        className={styles.corner}
        style={{
          left: inside(share(corner.x, PANEL.width)),
          top: inside(share(corner.y, PANEL.height)),
        }}
        data-pulls
      />
    </button>
  );
}

const LEAVES = ["Enter", "Escape", " "];
const STEP = 6; // panel units an arrow key moves it
const LONG_STEP = 60; // with Shift
const KEY_SCALE = 1.02; // how much one press of + enlarges it

function keyMoved({ key, shiftKey }: KeyboardEvent, place: PicturePlace): PicturePlace | null {
  const step = shiftKey ? LONG_STEP : STEP;
  switch (key) {
    case "ArrowLeft":
      return movePlace(place, { x: -step, y: 0 });
    case "ArrowRight":
      return movePlace(place, { x: step, y: 0 });
    case "ArrowUp":
      return movePlace(place, { x: 0, y: -step });
    case "ArrowDown":
      return movePlace(place, { x: 0, y: step });
    case "+":
    case "=":
      return scalePlace(place, KEY_SCALE, middleOf(place));
    case "-":
      return scalePlace(place, 1 / KEY_SCALE, middleOf(place));
    default:
      return null;
  }
}

function boxOf({ x, y, width, height }: PicturePlace) {
  return {
    left: share(x, PANEL.width),
    top: share(y, PANEL.height),
    width: share(width, PANEL.width),
    height: share(height, PANEL.height),
  };
}

function share(part: number, whole: number): string {
  return `${(100 * part) / whole}%`;
}

/** Kept far enough in from the paper's edge to be taken hold of. */
function inside(at: string): string {
  return `clamp(14px, ${at}, calc(100% - 14px))`;
}
