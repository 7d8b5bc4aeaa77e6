import type { View } from "../../lib/geometry";
import {
  encodeLive,
  type InkColour,
  type InkPoint,
  MAX_POINTS,
  NIB_LOOKS,
  type Nib,
} from "../../lib/ink";
import { drawStroke } from "../../lib/sheet";
import { freshStrokeId, type Room } from "../_room";
import { mayTell } from "./frame-pace";
import { isWorthKeeping } from "./keep-point";
import type { ShownStroke } from "./live-canvas";
import { nextZ } from "./next-z";
import type { PenSample } from "./pen-sample";

/** The stroke under this person's pen, and after that until the ink shows it. */
export interface OwnStroke extends ShownStroke {
  add(samples: readonly PenSample[]): void;
  /** Tells the others what is new, when it is time. Answers whether something is still untold. */
  tell(nowMs: number): boolean;
  /** The pen lifts: one verb, one undo step. */
  keep(): void;
  drop(): void;
}

export interface OwnStrokeStart {
  readonly room: Room;
  readonly panel: string;
  readonly view: View;
  readonly nib: Nib;
  readonly unitsAPixel: number;
  readonly first: PenSample;
}

const COLOURS: Readonly<Record<Nib, InkColour>> = {
  fine: "graphite",
  broad: "graphite",
  under: "blue",
};

/** Strokes of this page, numbered, so that the others can tell them apart. */
let strokesBegun = 0;

export function beginOwnStroke(start: OwnStrokeStart): OwnStroke {
  const { room, panel, view, nib, unitsAPixel, first } = start;
  const stroke = strokesBegun++;
  const colour = COLOURS[nib];
  const { width } = NIB_LOOKS[nib];
  const points: InkPoint[] = [[first.x, first.y, first.pressure]];
  let told = 0;
  let toldAt = Number.NEGATIVE_INFINITY;
  let strokeId: string | null = null;

  function tellAll(): void {
    if (told === points.length) return;
    const fresh = points.slice(told);
    room.live.send(
      encodeLive(
        told === 0
          ? { kind: "start", stroke, panel, view, nib, colour, width, points: fresh }
          : { kind: "more", stroke, points: fresh },
      ),
    );
    told = points.length;
  }

  return {
    nib,
    colour,
    width,
    points,
    get strokeId() {
      return strokeId;
    },
    add(samples) {
      for (const { x, y, pressure } of samples) {
        const next: InkPoint = [x, y, pressure];
        const last = points.at(-1) ?? next;
        if (points.length < MAX_POINTS && isWorthKeeping(last, next, unitsAPixel)) {
          points.push(next);
        }
      }
    },
    tell(nowMs) {
      if (strokeId !== null || told === points.length) return false;
      if (!mayTell(toldAt, nowMs)) return true;
      tellAll();
      toldAt = nowMs;
      return false;
    },
    keep() {
      tellAll();
      strokeId = freshStrokeId();
      room.live.send(encodeLive({ kind: "end", stroke, strokeId }));
      const ink = room.sheet.getSnapshot().panels.find(({ id }) => id === panel)?.ink[view] ?? [];
      drawStroke(room.drawing, strokeId, {
        ...{ panel, view, nib, colour, width, points },
        z: nextZ(ink, nib),
      });
    },
    drop() {
      if (told > 0) room.live.send(encodeLive({ kind: "cancel", stroke }));
    },
  };
}
