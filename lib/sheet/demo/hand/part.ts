import type { Point } from "../../../geometry";
import { curve } from "./curve";
import { hatch } from "./hatch";
import type { Pencil, Touch } from "./pencil";
import { type Knots, type Placer, placed } from "./placer";

/** How tones are hatched everywhere: one slant, as one hand does. */
const SLANT = { x: 0.5, y: 1 };

/** A part of the body that is drawn on in its own measures, wherever it is and however it is turned. */
export class Part {
  readonly #pencil: Pencil;
  readonly #place: Placer;

  constructor(pencil: Pencil, place: Placer) {
    this.#pencil = pencil;
    this.#place = place;
  }

  path(knots: Knots, closed = false): Point[] {
    return curve(placed(this.#place, knots), closed);
  }

  line(knots: Knots, touch?: Touch): void {
    this.#pencil.line(this.path(knots), touch);
  }

  /** A closed line that hides what lies behind it. */
  form(knots: Knots, touch?: Touch): void {
    this.#pencil.form(this.path(knots, true), touch);
  }

  tone(knots: Knots, { gap = 0.046, firm = 0.32 } = {}): void {
    hatch(this.#pencil, this.path(knots, true), { along: SLANT, gap, firm });
  }
}

/** Tone over any outline, at the same slant. Leg lengths between lines. */
export function tone(pencil: Pencil, outline: readonly Point[], gap = 0.046, firm = 0.32): void {
  hatch(pencil, outline, { along: SLANT, gap, firm });
}

/** A dark of one broad stroke: leather, felt, the stripe of a scarf. Panel units at full pressure. */
export function dark(width: number, firm = 0.9): Touch {
  return { nib: "broad", width, firm, even: true };
}

/** A thin line for what lies within a form: folds, seams, hair. */
export function thin(firm: number, width = 4): Touch {
  return { width, firm };
}
