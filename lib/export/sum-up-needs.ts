import type { CannotTell, CheckId } from "../gait";

/** One thing that is missing, and which questions wait for it. */
export interface Need {
  /** As a phrase after "needs". */
  readonly needs: string;
  readonly checks: readonly CheckId[];
  /** The first panel it concerns, as the way there; null when it concerns none in particular. */
  readonly panel: string | null;
}

/**
 * What keeps the readings from answering, each missing thing said once: what lacks on both sides or at
 * several frames is one thing. What the most questions wait for comes first, then the order of the checks.
 *
 * @example
 * const left = { kind: "cannot-tell", check: "slide", side: "left", panels: [], needs: "the left heel marked" };
 * const right = { ...left, side: "right", needs: "the right heel marked" };
 * sumUpNeeds([left, right]).map(({ needs }) => needs); // => ["the heel marked, left and right"]
 */
export function sumUpNeeds(cannotTell: readonly CannotTell[]): readonly Need[] {
  const alike = new Map<string, CannotTell[]>();
  for (const one of cannotTell) {
    const pattern = patternOf(one.needs);
    alike.set(pattern, [...(alike.get(pattern) ?? []), one]);
  }
  return [...alike]
    .toSorted(([, some], [, others]) => others.length - some.length)
    .map(([pattern, some]) => ({
      needs: oneNeed(
        pattern,
        some.map(({ needs }) => needs),
      ),
      checks: [...new Set(some.map(({ check }) => check))],
      panel: some.find(({ panels }) => panels.length > 0)?.panels[0] ?? null,
    }));
}

const SIDE = /\b(?:left|right)\b/g;
const FRAME = /\bframe (\d+)\b/;

/** What is needed, whichever side and frame it is needed of; as it stands where it names two sides. */
function patternOf(needs: string): string {
  const sides = needs.match(SIDE)?.length ?? 0;
  const pattern = needs.replace(FRAME, "frame #");
  return sides > 1 ? pattern : pattern.replace(SIDE, "§");
}

function oneNeed(pattern: string, needs: readonly string[]): string {
  const [first = ""] = needs;
  const sides = new Set(needs.flatMap((one) => one.match(SIDE) ?? []));
  const frames = new Set(needs.flatMap((one) => FRAME.exec(one)?.[1] ?? []));
  if (frames.size <= 1 && (sides.size <= 1 || !pattern.includes("§"))) return first;
  const both = pattern.includes("§") && sides.size > 1;
  const [side = ""] = sides;
  const sided = both ? `${pattern.replace("§ ", "")}, left and right` : pattern.replace("§", side);
  const list = [...frames].toSorted((a, b) => Number(a) - Number(b));
  return sided.replace("frame #", list.length > 1 ? `frames ${listed(list)}` : `frame ${list[0]}`);
}

/** "13, 25 and 37". */
function listed(parts: readonly string[]): string {
  return [parts.slice(0, -1).join(", "), ...parts.slice(-1)]
    .filter((part) => part !== "")
    .join(" and ");
}
