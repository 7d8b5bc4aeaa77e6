import type { WalkPanel } from "./walk";

interface Known {
  terms: readonly unknown[];
  readonly by: readonly unknown[];
  readonly told: unknown;
}

/** What was worked out, for as long as somebody holds the panel that it belongs to. */
const memory = new WeakMap<WalkPanel, Map<unknown, Known>>();

/** What was worked out of a walk's panels: each by a function, and by what that goes by beside. */
export interface Memory {
  /** @param work known by its identity, so it is to be a function of a file, not made anew */
  of<Told>(
    panel: WalkPanel,
    work: unknown,
    by: readonly unknown[],
  ): { readonly told: Told } | undefined;
  keep<Told>(panel: WalkPanel, work: unknown, by: readonly unknown[], told: Told): Told;
}

/**
 * Remembers what was worked out from one reading of a walk to the next. Panels are never changed but replaced,
 * so what was told of a panel holds for as long as the terms of the whole walk, and whatever the work goes by
 * beside the panel, are the same.
 *
 * @param terms what every answer may depend on; told by identity, one after the other
 */
export function memoryBy(terms: readonly unknown[]): Memory {
  return {
    of<Told>(panel: WalkPanel, work: unknown, by: readonly unknown[]) {
      const known = memory.get(panel)?.get(work);
      if (known === undefined || !areSame(known.terms, terms)) return undefined;
      if (!areSame(known.by, by)) return undefined;
      known.terms = terms; // the next look is told by one comparison
      return known as { readonly told: Told };
    },
    keep(panel, work, by, told) {
      const ofPanel = memory.get(panel) ?? new Map<unknown, Known>();
      if (ofPanel.size === 0) memory.set(panel, ofPanel);
      ofPanel.set(work, { terms, by, told });
      return told;
    },
  };
}

const lists = new WeakMap<object, readonly unknown[]>();

/** The list that was last told for this owner where this one is the same, so that it is known by one comparison. */
export function asBefore(owner: object, list: readonly unknown[]): readonly unknown[] {
  const before = lists.get(owner);
  if (before !== undefined && areSame(before, list)) return before;
  lists.set(owner, list);
  return list;
}

/** Whether two lists hold the same things, NaN being the same as itself. */
export function areSame(one: readonly unknown[], other: readonly unknown[]): boolean {
  if (one === other) return true;
  if (one.length !== other.length) return false;
  for (let at = 0; at < one.length; at += 1) if (!Object.is(one[at], other[at])) return false;
  return true;
}
