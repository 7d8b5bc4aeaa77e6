"use client";
import { type ChangeEvent, useRef } from "react";
import { PICTURE_TYPES } from "../../shared/picture-header";
import { Button, type ButtonProps } from "../_controls";
import { reference as words } from "../_words";
import type { PictureSpot } from "../_workspace";
import { type Desk, layPictures } from "./lay-pictures";
import styles from "./reference.module.css";

export interface ChooseButtonProps extends Pick<ButtonProps, "look" | "aria-label" | "children"> {
  readonly desk: Desk;
  readonly spot: PictureSpot;
}

/** Opens the system's own file chooser, which touch, keys and cameras know. */
export function ChooseButton({ desk, spot, ...button }: ChooseButtonProps) {
  const input = useRef<HTMLInputElement>(null);
  const take = (event: ChangeEvent<HTMLInputElement>) => {
    const files = [...(event.currentTarget.files ?? [])];
    event.currentTarget.value = ""; // the same file may be chosen again
    if (files.length > 0) void layPictures(desk, files, spot);
  };
  return (
    <>
      <input
        ref={input}
        className={styles.file}
        type="file"
        accept={PICTURE_TYPES.join(",")}
        multiple
        tabIndex={-1}
        aria-label={words.file}
        onChange={take}
      />
      <Button small {...button} onClick={() => input.current?.click()} />
    </>
  );
}
