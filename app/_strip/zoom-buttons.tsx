"use client";
import { Button } from "../_controls";
import { strip } from "../_words";
import { ZOOM } from "../_workspace";

export interface ZoomButtonsProps {
  readonly zoom: number;
  readonly setZoom: (zoom: number) => void;
}

/** Closer, further, and the whole again. */
export function ZoomButtons({ zoom, setZoom }: ZoomButtonsProps) {
  return (
    <>
      <Button
        small
        aria-label={strip.zoom.out}
        disabled={zoom <= ZOOM.least}
        onClick={() => setZoom(zoom / ZOOM.step)}
      >
        −
      </Button>
      <Button small aria-label={strip.zoom.fit} onClick={() => setZoom(1)}>
        {strip.zoom.level(Math.round(zoom * 100))}
      </Button>
      <Button
        small
        aria-label={strip.zoom.in}
        disabled={zoom >= ZOOM.most}
        onClick={() => setZoom(zoom * ZOOM.step)}
      >
        +
      </Button>
    </>
  );
}
