"use client";
import { type RefObject, useEffect, useLayoutEffect, useRef } from "react";

const WHEEL_ZOOM = 0.0022; // one notch of a wheel (100 px) zooms by about a quarter
const OWN_FINGERS = "[data-own-fingers]"; // what two fingers move instead of the paper
const EMPTY_DESK = "[data-desk]"; // what may be grabbed with any tool in hand

export interface PanAndZoom {
  readonly ref: RefObject<HTMLElement | null>;
  readonly zoom: number;
  readonly setZoom: (zoom: number) => void;
  /** The tool in hand moves the paper: a drag anywhere pans. */
  readonly grabs: boolean;
}

/**
 * Moves and enlarges what lies in a scrolling element. The wheel and keys scroll it as they do
 * anywhere; here are wheel with Ctrl and pinch (zoom around the pointer), two fingers, the middle
 * button, the paper tool and the bare desk (drag).
 */
export function usePanAndZoom({ ref, zoom, setZoom, grabs }: PanAndZoom): void {
  const now = useRef({ zoom, grabs });
  now.current = { zoom, grabs };
  const anchor = useRef<Anchor | null>(null);

  // After a zoom what was under the pointer is there again.
  const laidOut = useRef(zoom);
  useLayoutEffect(() => {
    const element = ref.current;
    if (laidOut.current === zoom) return;
    laidOut.current = zoom;
    if (element !== null && anchor.current !== null) putBack(element, anchor.current);
    anchor.current = null;
  }, [ref, zoom]);

  useEffect(() => {
    const element = ref.current;
    if (element === null) return;
    const zoomAround = (x: number, y: number, factor: number) => {
      anchor.current = anchorAt(element, x, y);
      setZoom(now.current.zoom * factor);
    };
    const stops = [
      followWheel(element, zoomAround),
      followDrag(element, () => now.current.grabs),
      followFingers(element, zoomAround),
    ];
    return () => {
      for (const stop of stops) stop();
    };
  }, [ref, setZoom]);
}

interface Anchor {
  /** Shares of the content's width and height, and where on screen they were. */
  readonly shareX: number;
  readonly shareY: number;
  readonly x: number;
  readonly y: number;
}

function anchorAt(element: HTMLElement, clientX: number, clientY: number): Anchor {
  const box = element.getBoundingClientRect();
  const x = clientX - box.left;
  const y = clientY - box.top;
  return {
    shareX: (element.scrollLeft + x) / Math.max(1, element.scrollWidth),
    shareY: (element.scrollTop + y) / Math.max(1, element.scrollHeight),
    x,
    y,
  };
}

function putBack(element: HTMLElement, { shareX, shareY, x, y }: Anchor): void {
  element.scrollLeft = shareX * element.scrollWidth - x;
  element.scrollTop = shareY * element.scrollHeight - y;
}

type ZoomAround = (x: number, y: number, factor: number) => void;

/** A wheel with Ctrl, which is also how a track pad tells a pinch. */
function followWheel(element: HTMLElement, zoomAround: ZoomAround): () => void {
  const turn = (event: WheelEvent) => {
    if (!event.ctrlKey && !event.metaKey) {
      // A wheel without a sideways axis runs along the strip where there is nothing above or below.
      if (event.deltaX === 0 && element.scrollHeight <= element.clientHeight) {
        element.scrollLeft += event.deltaY;
      }
      return;
    }
    event.preventDefault();
    zoomAround(event.clientX, event.clientY, Math.exp(-event.deltaY * WHEEL_ZOOM));
  };
  element.addEventListener("wheel", turn, { passive: false });
  return () => element.removeEventListener("wheel", turn);
}

function followDrag(element: HTMLElement, grabs: () => boolean): () => void {
  let from: { x: number; y: number; left: number; top: number; id: number } | null = null;
  const down = (event: PointerEvent) => {
    const target = event.target as Element;
    const bare = target === element || target.matches(EMPTY_DESK);
    const wanted = event.button === 1 || (event.button === 0 && (grabs() || bare));
    if (!wanted || target.closest("button, input, select, a") !== null) return;
    if (event.pointerType === "touch" && !grabs()) return; // fingers pan by themselves
    event.preventDefault();
    element.setPointerCapture(event.pointerId);
    const { scrollLeft: left, scrollTop: top } = element;
    from = { x: event.clientX, y: event.clientY, left, top, id: event.pointerId };
  };
  const move = (event: PointerEvent) => {
    if (from === null || event.pointerId !== from.id) return;
    element.scrollLeft = from.left - (event.clientX - from.x);
    element.scrollTop = from.top - (event.clientY - from.y);
  };
  const up = () => {
    from = null;
  };
  return listen(element, {
    pointerdown: down,
    pointermove: move,
    pointerup: up,
    pointercancel: up,
  });
}

/** Two fingers: their distance zooms, their middle pans. */
function followFingers(element: HTMLElement, zoomAround: ZoomAround): () => void {
  const fingers = new Map<number, { x: number; y: number }>();
  let last: { x: number; y: number; apart: number } | null = null;
  const measure = () => {
    const [one, two] = [...fingers.values()];
    if (one === undefined || two === undefined || fingers.size !== 2) return null;
    return {
      x: (one.x + two.x) / 2,
      y: (one.y + two.y) / 2,
      apart: Math.max(1, Math.hypot(one.x - two.x, one.y - two.y)),
    };
  };
  const down = (event: PointerEvent) => {
    if (event.pointerType !== "touch") return;
    if ((event.target as Element).closest(OWN_FINGERS) !== null) return;
    fingers.set(event.pointerId, { x: event.clientX, y: event.clientY });
    last = measure();
  };
  const move = (event: PointerEvent) => {
    if (!fingers.has(event.pointerId)) return;
    fingers.set(event.pointerId, { x: event.clientX, y: event.clientY });
    const next = measure();
    if (next === null || last === null) return;
    element.scrollLeft -= next.x - last.x;
    element.scrollTop -= next.y - last.y;
    zoomAround(next.x, next.y, next.apart / last.apart);
    last = next;
  };
  const up = (event: PointerEvent) => {
    fingers.delete(event.pointerId);
    last = measure();
  };
  return listen(
    element,
    { pointerdown: down, pointermove: move, pointerup: up, pointercancel: up },
    { capture: true }, // the ink layer keeps its own pointer; the fingers are counted before it
  );
}

type PointerListeners = Readonly<Record<string, (event: PointerEvent) => void>>;

function listen(
  element: HTMLElement,
  listeners: PointerListeners,
  options: AddEventListenerOptions = {},
): () => void {
  for (const [name, listener] of Object.entries(listeners)) {
    element.addEventListener(name, listener as EventListener, options);
  }
  return () => {
    for (const [name, listener] of Object.entries(listeners)) {
      element.removeEventListener(name, listener as EventListener, options);
    }
  };
}
