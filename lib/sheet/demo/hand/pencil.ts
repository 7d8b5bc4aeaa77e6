import { PANEL } from "../../../body";
import type { Point } from "../../../geometry";
import type { InkPoint, Stroke } from "../../../ink";
import { inside, type Solid, solidOf, turnOf } from "./polygon";
import { seeded, type Unevenness } from "./seeded";
import { thin } from "./thin";
import { across, add, dot, sub, times, unit } from "./vector";

/** What a stroke is before it knows its panel. */
export type Drawn = Pick<Stroke, "nib" | "colour" | "width" | "points">;

/** How a line is put down. */
export interface Touch {
  readonly nib?: Stroke["nib"];
  /** Full width at pressure 1, panel units. */
  readonly width?: number;
  /** How hard the pencil is pressed, 0..1. */
  readonly firm?: number;
  /** Which side of the line, seen along it, looks outward: there light thins it and shade thickens it. */
  readonly outside?: "left" | "right";
  /** Pressed alike from end to end: for darks rather than lines. */
  readonly even?: boolean;
  /** Drawn through whatever hides it: only the drawing under the drawing is. */
  readonly through?: boolean;
  /** Left out where this says so: an outline that runs into another form of the same thing. */
  readonly skip?: (point: Point) => boolean;
}

const WIDTH = 7.8; // panel units
const FIRM = 0.6;
const OVERSHOOT = 0.008; // leg lengths: a hand starts a little before and stops a little after
const LEAST = { whole: 4, cut: 8 } as const; // samples; a line or what is left of one that is shorter is a speck
const WAVER = 0.6; // panel units
const OVERLAP = 6; // samples that a closed line is drawn over its own beginning

/** A sheet of paper that is drawn on from near to far: a solid hides what is drawn after it. */
export class Pencil {
  readonly #solids: Solid[] = [];
  readonly #strokes: Drawn[] = [];
  readonly #chance: Unevenness;
  readonly #light: Point;

  /** @param light the way to the light, on the page (y up) */
  constructor(seed: number, light: Point) {
    this.#chance = seeded(seed);
    this.#light = unit(light);
  }

  /** What was drawn, far things first: the under-drawing lies lowest. */
  strokes(): readonly Drawn[] {
    const rank = ({ nib }: Drawn) => (nib === "under" ? 0 : 1);
    return this.#strokes.toReversed().sort((a, b) => rank(a) - rank(b));
  }

  chance(): number {
    return this.#chance();
  }

  /** From here on, what lies within the outline is hidden. */
  solid(outline: readonly Point[]): void {
    this.#solids.push(solidOf(outline));
  }

  hides(point: Point): boolean {
    return this.#solids.some((solid) => inside(point, solid));
  }

  /** Draws the runs of a line that nothing nearer hides. Units: leg lengths, y up. */
  line(points: readonly Point[], touch: Touch = {}): void {
    this.#draw(overshot(points), touch);
  }

  #draw(points: readonly Point[], touch: Touch): void {
    let run: Point[] = [];
    let cut = false;
    for (const point of points) {
      const left = touch.skip?.(point) === true;
      if (!left && (touch.through === true || !this.hides(point))) run.push(point);
      else {
        this.#put(run, touch, { start: cut, end: true });
        run = [];
        cut = true;
      }
    }
    this.#put(run, touch, { start: cut, end: false });
  }

  /** Draws a closed form, its outside told by the way it turns, and hides what lies behind it. */
  form(outline: readonly Point[], touch: Touch = {}): void {
    const closed = [...outline, ...outline.slice(1, OVERLAP)];
    const outside = turnOf(outline) > 0 ? "right" : "left";
    this.#draw(closed, { outside, ...touch });
    this.solid(outline);
  }

  #put(run: readonly Point[], touch: Touch, cut: { start: boolean; end: boolean }): void {
    if (run.length < (cut.start || cut.end ? LEAST.cut : LEAST.whole)) return;
    const { nib = "fine", width = WIDTH, firm = FIRM } = touch;
    const waver = this.#waver();
    const points = run.map((point, i): InkPoint => {
      const t = i / (run.length - 1);
      const [dx, dy] = waver(i);
      const pressed =
        firm * (touch.even === true ? 1 : swell(t, cut)) * this.#shade(run, i, touch.outside);
      return [
        PANEL.width / 2 + point.x * PANEL.plainLeg + dx,
        PANEL.groundY - point.y * PANEL.plainLeg + dy,
        Math.min(1, Math.max(0.05, pressed)),
      ];
    });
    const colour = nib === "under" ? "blue" : "graphite";
    this.#strokes.push({ nib, colour, width, points: thin(points) });
  }

  /** Two slow waves, a different pair for each line: a hand, not a plotter. */
  #waver(): (i: number) => readonly [number, number] {
    const phases = Array.from({ length: 4 }, () => this.#chance() * 2 * Math.PI);
    const [a = 0, b = 0, c = 0, d = 0] = phases;
    return (i) => [
      WAVER * (0.6 * Math.sin(i * 0.06 + a) + 0.4 * Math.sin(i * 0.15 + b)),
      WAVER * (0.6 * Math.sin(i * 0.055 + c) + 0.4 * Math.sin(i * 0.14 + d)),
    ];
  }

  /** Under 1 where the line looks at the light, over 1 where it looks away. */
  #shade(run: readonly Point[], i: number, outside: Touch["outside"]): number {
    const from = run[Math.max(0, i - 2)];
    const to = run[Math.min(run.length - 1, i + 2)];
    if (outside === undefined || from === undefined || to === undefined) return 1;
    const left = across(unit(sub(to, from)));
    const lit = (outside === "left" ? 1 : -1) * dot(left, this.#light);
    return 0.94 - 0.48 * lit;
  }
}

function overshot(points: readonly Point[]): Point[] {
  const [first, second] = points;
  const [before, last] = points.slice(-2);
  if (first === undefined || second === undefined || before === undefined || last === undefined) {
    return [...points];
  }
  const on = (from: Point, to: Point) => add(to, times(unit(sub(to, from)), OVERSHOOT));
  return [on(second, first), ...points, on(before, last)];
}

/** A stroke is put down lightly, pressed, and lifted; where something hides it, it stays pressed. */
function swell(t: number, cut: { start: boolean; end: boolean }): number {
  const rise = cut.start ? 1 : Math.min(1, 0.55 + t * 3);
  const fall = cut.end ? 1.05 : Math.min(1, 0.4 + (1 - t) * 2.6);
  return rise * fall;
}
