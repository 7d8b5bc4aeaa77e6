import { PANEL } from "../../lib/body";
import type { View } from "../../lib/geometry";
import { type InkStroke, rubOut, rubOutPart } from "../../lib/sheet";
import { type BitmapSize, openInkBitmap, sayPenDown } from "../_paper";
import { freshStrokeId, type Room } from "../_room";
import type { WorkspaceStore } from "../_workspace";
import { openLiveCanvas } from "./live-canvas";
import { liveStrokesOf } from "./live-strokes";
import { beginOwnStroke, type OwnStroke } from "./own-stroke";
import { beginPartRubbing, type PartRubbing } from "./part-rubbing";
import type { Deed, Gesture } from "./pen-listener";
import type { PenSample } from "./pen-sample";
import { beginRubbing } from "./rubbing";

/** One paper's ink on screen: what the document holds, and what is still under a pen. */
export interface PaperInk {
  show(ink: readonly InkStroke[], size: BitmapSize): void;
  rest(): void;
  begin(deed: Deed, first: PenSample): Gesture;
  close(): void;
}

export interface PaperInkParts {
  readonly room: Room;
  readonly workspace: WorkspaceStore;
  readonly panel: string;
  readonly view: View;
  /** The canvas of the stored ink, and the one for strokes in progress. */
  readonly stored: HTMLCanvasElement;
  readonly live: HTMLCanvasElement;
}

const RUBBER_PX = 7; // radius, CSS pixels: about the end of a pencil

export function openPaperInk(parts: PaperInkParts): PaperInk {
  const { room, workspace, panel, view } = parts;
  const others = liveStrokesOf(room);
  const canvas = openLiveCanvas(parts.live);
  const bitmap = openInkBitmap(parts.stored, settle);
  let own: OwnStroke[] = [];
  let ink: readonly InkStroke[] = [];
  let size: BitmapSize | null = null;
  let frameAsked = 0;
  let parting: PartRubbing | null = null;

  const stopWatching = others.watch(panel, view, ask);

  function ask(): void {
    if (frameAsked === 0) frameAsked = requestAnimationFrame(frame);
  }

  function frame(nowMs: number): void {
    frameAsked = 0;
    paint();
    // Every stroke gets its turn to tell, so no short-circuit here.
    if (own.filter((stroke) => stroke.tell(nowMs)).length > 0) ask();
  }

  function paint(): void {
    if (size === null) return;
    const shown = [...others.on(panel, view), ...own];
    // Under-drawing lies beneath the pencils, also while it is drawn.
    const beneath = shown.length > 0 && shown.every(({ nib }) => nib === "under");
    parts.live.style.zIndex = beneath ? "-1" : "";
    canvas.show(shown, size);
  }

  /** The stored ink was painted: what it shows need not be shown twice. */
  function settle(painted: readonly InkStroke[]): void {
    const waiting = own.length > 0 || others.on(panel, view).length > 0;
    if (!waiting) return;
    const there = new Set(painted.map(({ id }) => id));
    for (const { strokeId } of others.on(panel, view)) {
      if (strokeId !== null && there.has(strokeId)) others.arrived(strokeId);
    }
    own = own.filter(
      ({ strokeId }) => strokeId === null || (!there.has(strokeId) && isOnItsWay(strokeId)),
    );
    paint();
  }

  /** Whether the sheet has the stroke and only the pixels are late; else it was undone already. */
  function isOnItsWay(strokeId: string): boolean {
    const now = room.sheet.getSnapshot().panels.find(({ id }) => id === panel);
    return now?.ink[view].some(({ id }) => id === strokeId) ?? false;
  }

  const penDown = (down: boolean) => sayPenDown(room, workspace, down);

  function draw(first: PenSample): Gesture {
    const { nib } = workspace.getState();
    const stroke = beginOwnStroke({ room, panel, view, nib, unitsAPixel: unitsAPixel(), first });
    own.push(stroke);
    penDown(true);
    ask();
    return {
      move(samples) {
        stroke.add(samples);
        ask();
      },
      end() {
        stroke.keep();
        penDown(false);
        ask();
      },
      cancel() {
        stroke.drop();
        own = own.filter((one) => one !== stroke);
        penDown(false);
        ask();
      },
    };
  }

  function rub(first: PenSample): Gesture {
    const rubbing = beginRubbing(first, RUBBER_PX * unitsAPixel());
    const move = (samples: readonly PenSample[]) => {
      if (rubbing.move(ink, samples)) bitmap.fade(rubbing.crossed);
    };
    penDown(true);
    move([first]);
    return {
      move,
      end() {
        if (rubbing.crossed.size > 0) rubOut(room.drawing, rubbing.crossed);
        penDown(false);
      },
      cancel() {
        bitmap.fade(new Set());
        penDown(false);
      },
    };
  }

  /** Only what the rubber touches goes: what is left is painted as it will be. */
  function rubPart(first: PenSample): Gesture {
    const rubbing = beginPartRubbing(first, RUBBER_PX * unitsAPixel());
    const move = (samples: readonly PenSample[]) => {
      if (rubbing.move(ink, samples) && size !== null) bitmap.show(rubbing.left(ink), size);
    };
    parting = rubbing;
    penDown(true);
    move([first]);
    return {
      move,
      end() {
        parting = null; // the sheet shows what is left from now on
        if (rubbing.pieces.size > 0) rubOutPart(room.drawing, rubbing.pieces, freshStrokeId);
        penDown(false);
      },
      cancel() {
        parting = null;
        if (size !== null) bitmap.show(ink, size);
        penDown(false);
      },
    };
  }

  const unitsAPixel = () => PANEL.width / Math.max(1, parts.stored.clientWidth);

  return {
    show(nextInk, nextSize) {
      ink = nextInk;
      size = nextSize;
      bitmap.show(parting?.left(ink) ?? ink, size);
      ask();
    },
    rest() {
      size = null;
      own = own.filter(({ strokeId }) => strokeId === null);
      bitmap.rest();
      canvas.rest();
    },
    begin(deed, first) {
      if (deed === "draw") return draw(first);
      return workspace.getState().rubPart ? rubPart(first) : rub(first);
    },
    close() {
      stopWatching();
      cancelAnimationFrame(frameAsked);
      bitmap.rest();
    },
  };
}
