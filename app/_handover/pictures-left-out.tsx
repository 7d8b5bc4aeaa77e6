"use client";
import type { Sheet } from "../../lib/sheet";
import { useSheet } from "../_room";
import { handover } from "../_words";

export interface PicturesLeftOutProps {
  readonly from: keyof typeof handover.leftOut;
}

const picturesOn = ({ panels }: Sheet): number =>
  panels.flatMap(({ pictures }) => [pictures.side, pictures.front]).filter(Boolean).length;

/** Says that the pictures under the paper do not go along, where there are some. */
export function PicturesLeftOut({ from }: PicturesLeftOutProps) {
  const pictures = useSheet(picturesOn);
  return pictures === 0 ? null : <p>{handover.leftOut[from](pictures)}</p>;
}
