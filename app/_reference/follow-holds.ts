import { PANEL } from "../../lib/body";
import type { Point } from "../../lib/geometry";
import type { PicturePlace } from "../../lib/sheet";
import { carryPlace, pullPlace } from "./place-picture";

export interface HoldDeps {
  /** Where it lies before it is held. */
  place(): PicturePlace;
  show(place: PicturePlace): void;
  /** Let go: this is where it shall lie. */
  keep(place: PicturePlace): void;
  /** Let go without having been moved, or taken away by the system. */
  leave(): void;
}

interface Holds {
  /** Where it lay when the last pointer came or went. */
  readonly base: PicturePlace;
  readonly from: ReadonlyMap<number, Point>;
  /** It was taken at its corner. */
  readonly pulls: boolean;
}

/**
 * A pen, a mouse or a finger moves the picture, its corner pulled scales it, two fingers do both. It is
 * shown on the way and kept once, when the last of them lets go. Whoever follows stops following.
 */
export function followHolds(grip: HTMLElement, deps: HoldDeps): () => void {
  const pointers = new Map<number, Point>();
  let holds: Holds | null = null;
  let place: PicturePlace | null = null;

  const at = (event: PointerEvent): Point => {
    const { left, top, width } = grip.getBoundingClientRect();
    const scale = PANEL.width / width;
    return { x: (event.clientX - left) * scale, y: (event.clientY - top) * scale };
  };
  const hold = (pulls: boolean) => {
    holds = { base: place ?? deps.place(), from: new Map(pointers), pulls };
  };
  const down = (event: PointerEvent) => {
    if (event.button !== 0 || pointers.size === 2) return;
    grip.setPointerCapture(event.pointerId);
    pointers.set(event.pointerId, at(event));
    const onCorner = (event.target as Element).closest("[data-pulls]") !== null;
    hold(onCorner && pointers.size === 1);
  };
  const move = (event: PointerEvent) => {
    if (holds === null || !pointers.has(event.pointerId)) return;
    pointers.set(event.pointerId, at(event));
    const from = [...holds.from.values()];
    const to = [...pointers.values()];
    const [first, firstNow] = [from[0], to[0]];
    if (first === undefined || firstNow === undefined) return;
    place = holds.pulls ? pullPlace(holds.base, first, firstNow) : carryPlace(holds.base, from, to);
    deps.show(place);
  };
  const up = (event: PointerEvent) => {
    if (!pointers.delete(event.pointerId)) return;
    if (pointers.size > 0) return hold(false);
    const last = place;
    place = null;
    holds = null;
    if (last === null || event.type === "pointercancel") deps.leave();
    else deps.keep(last);
  };
  grip.addEventListener("pointerdown", down);
  grip.addEventListener("pointermove", move);
  grip.addEventListener("pointerup", up);
  grip.addEventListener("pointercancel", up);
  return () => {
    grip.removeEventListener("pointerdown", down);
    grip.removeEventListener("pointermove", move);
    grip.removeEventListener("pointerup", up);
    grip.removeEventListener("pointercancel", up);
    if (place !== null) deps.leave();
  };
}
