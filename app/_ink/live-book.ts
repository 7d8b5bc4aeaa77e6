import type { View } from "../../lib/geometry";
import type { InkPoint, LiveMessage, Stroke } from "../../lib/ink";

/** Somebody else's stroke that the document does not hold yet. Its points grow in place. */
export interface LiveStroke extends Pick<Stroke, "panel" | "view" | "nib" | "colour" | "width"> {
  readonly sender: number;
  readonly points: InkPoint[];
  /** Set once the pen has lifted: the stroke that will come by way of the document. */
  strokeId: string | null;
  /** Milliseconds, on the listener's clock. */
  heardAt: number;
}

/** A view of a panel, as a key. */
export const paperKey = (panel: string, view: View): string => `${view}.${panel}`;

/** A stroke that has grown silent this long will not be finished by its hand. */
export const SILENCE_MS = 10_000;
/** Strokes one person may have under way at once; a hand has one, a slow line a few more. */
const MOST_A_SENDER = 16;
const MOST_POINTS = 65_535;

/**
 * Keeps the strokes that others have under the pen, by where they are drawn. Each method answers
 * with the papers (`paperKey`) on which something changed.
 */
export interface LiveBook {
  hear(sender: number, message: LiveMessage, nowMs: number): readonly string[];
  /** The document now holds this stroke. */
  arrived(strokeId: string): readonly string[];
  /** Only these people are still here. */
  keepOnly(senders: ReadonlySet<number>): readonly string[];
  expire(nowMs: number): readonly string[];
  on(key: string): readonly LiveStroke[];
  readonly size: number;
}

export function createLiveBook(): LiveBook {
  const strokes = new Map<string, LiveStroke>();

  function dropWhere(goes: (stroke: LiveStroke) => boolean): readonly string[] {
    const touched: string[] = [];
    for (const [name, stroke] of strokes) {
      if (!goes(stroke)) continue;
      strokes.delete(name);
      touched.push(paperKey(stroke.panel, stroke.view));
    }
    return touched;
  }

  return {
    hear(sender, message, nowMs) {
      const name = `${sender}.${message.stroke}`;
      if (message.kind === "start") {
        const own = [...strokes.values()].filter((stroke) => stroke.sender === sender);
        if (own.length >= MOST_A_SENDER) return [];
        const { panel, view, nib, colour, width, points } = message;
        strokes.set(name, {
          ...{ sender, panel, view, nib, colour, width },
          points: [...points],
          strokeId: null,
          heardAt: nowMs,
        });
        return [paperKey(panel, view)];
      }
      const stroke = strokes.get(name);
      if (stroke === undefined) return []; // its start went missing: the document will bring it whole
      stroke.heardAt = nowMs;
      if (message.kind === "cancel") strokes.delete(name);
      if (message.kind === "end") stroke.strokeId = message.strokeId;
      if (message.kind === "more" && stroke.points.length < MOST_POINTS) {
        stroke.points.push(...message.points);
      }
      return [paperKey(stroke.panel, stroke.view)];
    },
    arrived: (strokeId) => dropWhere((stroke) => stroke.strokeId === strokeId),
    keepOnly: (senders) => dropWhere(({ sender }) => !senders.has(sender)),
    expire: (nowMs) => dropWhere(({ heardAt }) => nowMs - heardAt >= SILENCE_MS),
    on: (key) => [...strokes.values()].filter(({ panel, view }) => paperKey(panel, view) === key),
    get size() {
      return strokes.size;
    },
  };
}
