"use client";
import { useCallback, useState } from "react";
import { type Frame, nearestDrawn } from "../../lib/motion";
import { type Panel, type PanelId, slidePanel } from "../../lib/sheet";
import { useRoom, useSheet } from "../_room";
import type { StripGeometry } from "./strip-geometry";

/** A stem's foot while it is held: the ruler must not move under it. */
interface Held {
  readonly panel: PanelId;
  readonly frame: Frame;
  readonly geometry: StripGeometry;
}

export interface Feet {
  /** The geometry to lay out with: the one from before the foot was taken, while it is held. */
  readonly geometry: StripGeometry;
  frameOf(panel: Panel): Frame;
  /** Takes a foot along the ruler, from drawn frame to drawn frame; nothing is written until it is put down. */
  hold(panel: PanelId, frame: Frame): void;
  putDown(): void;
  letGo(): void;
}

/** Moves stems' feet: shown at once, written once, as one edit. */
export function useFeet(resting: StripGeometry): Feet {
  const room = useRoom();
  const [held, setHeld] = useState<Held | null>(null);
  const exposure = useSheet((sheet) => sheet.head.exposure);
  const geometry = held?.geometry ?? resting;
  const hold = useCallback(
    (panel: PanelId, frame: Frame) =>
      setHeld({ panel, frame: Math.max(1, nearestDrawn(frame, exposure)), geometry }),
    [geometry, exposure],
  );
  return {
    geometry,
    frameOf: (panel) => (held?.panel === panel.id ? held.frame : panel.frame),
    hold,
    putDown() {
      if (held !== null) slidePanel(room.drawing, held.panel, held.frame);
      setHeld(null);
    },
    letGo: () => setHeld(null),
  };
}
