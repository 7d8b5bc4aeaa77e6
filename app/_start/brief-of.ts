import { layOut } from "../../lib/sheet";
import { BRIEF_DEFAULTS, BRIEF_RANGES, leastFramesPerStep } from "../../shared/brief-defaults";

export interface Choices {
  readonly leadIn: boolean;
  readonly exposure: 1 | 2;
}

/**
 * The brief as the form gives it. A field left empty takes its default, so it is left out; what is
 * out of range goes to the hub as it is, which says what it expects.
 */
export function briefOf(form: FormData, { leadIn, exposure }: Choices): unknown {
  const text = (name: string) => String(form.get(name) ?? "").trim();
  const number = (name: string) => (text(name) === "" ? undefined : Number(text(name)));
  const left = number("left") ?? BRIEF_DEFAULTS.framesPerStep.left;
  const right = number("right") ?? BRIEF_DEFAULTS.framesPerStep.right;
  const legPercent = number("legPercent");
  return {
    ...(text("title") === "" ? {} : { title: text("title") }),
    shot: text("shot"),
    kind: text("kind"),
    framesPerSecond: number("framesPerSecond"),
    exposure,
    framesPerStep: { left, right },
    stepLength: number("stepLength"),
    travel: text("travel"),
    leadIn,
    build: {
      headsTall: number("headsTall"),
      ...(legPercent === undefined ? {} : { legShare: legPercent / 100 }),
      statureMetres: number("statureMetres") ?? null,
    },
  };
}

export interface FramesAhead extends Choices {
  readonly left: number;
  readonly right: number;
}

/** The frames such a strip will hold, or null while the numbers make none. */
export function framesAhead({ left, right, exposure, leadIn }: FramesAhead): number[] | null {
  const min = leastFramesPerStep(exposure);
  const { max } = BRIEF_RANGES.framesPerStep;
  const fits = [left, right].every((n) => Number.isInteger(n) && n >= min && n <= max);
  if (!fits) return null;
  const framesPerStep = { left, right };
  const sheet = layOut({ ...BRIEF_DEFAULTS, exposure, leadIn, framesPerStep }, () => "");
  return sheet.panels.map(({ frame }) => frame);
}
