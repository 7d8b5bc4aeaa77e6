import type { WalkPanel } from "./walk";

/** One thing that can be worked out of a walk: of a panel, by a function, and by what that goes by beside. */
export interface Asked {
  readonly panel: WalkPanel;
  /** Known by its identity, so it is to be a function of a file, not made anew. */
  readonly work: unknown;
  readonly by: readonly unknown[];
}

interface Known {
  terms: readonly unknown[];
  readonly by: readonly unknown[];
  readonly told: unknown;
}

/** What was worked out, for as long as somebody holds the panel that it belongs to. */
const memory = new WeakMap<WalkPanel, Map<unknown, Known>>();

/**
 * Remembers what was worked out from one reading of a walk to the next. Panels are never changed but replaced,
 * so what was told of a panel holds for as long as the terms of the whole walk, and whatever the work goes by
 * beside the panel, are the same.
 *
 * @param terms what every answer may depend on; told by identity, one after the other
 */
export function memoryBy(terms: readonly unknown[]) {
  return <Told>({ panel, work, by }: Asked, run: () => Told): Told => {
    const ofPanel = memory.get(panel) ?? new Map<unknown, Known>();
    const known = ofPanel.get(work);
    if (known !== undefined && areSame(known.terms, terms) && areSame(known.by, by)) {
      known.terms = terms; // the next look is told by one comparison
      return known.told as Told;
    }
    const told = run();
    if (ofPanel.size === 0) memory.set(panel, ofPanel);
    ofPanel.set(work, { terms, by, told });
    return told;
  };
}

/** Whether two lists hold the same things, NaN being the same as itself. */
export function areSame(one: readonly unknown[], other: readonly unknown[]): boolean {
  if (one === other) return true;
  if (one.length !== other.length) return false;
  for (let at = 0; at < one.length; at += 1) if (!Object.is(one[at], other[at])) return false;
  return true;
}
