import type { CannotTell, CheckId } from "../../lib/gait";

/** One thing that is missing, and which questions wait for it. */
export interface Need {
  readonly needs: string;
  readonly checks: readonly CheckId[];
  /** The first panel it concerns, as the way there; null when it concerns none in particular. */
  readonly panel: string | null;
}

/**
 * What keeps the board from answering, each missing thing said once. The order is that of the
 * checks, so what the first question needs comes first.
 */
export function sumUpUntold(cannotTell: readonly CannotTell[]): readonly Need[] {
  const needs = new Map<string, { checks: Set<CheckId>; panel: string | null }>();
  for (const { needs: what, check, panels } of cannotTell) {
    const known = needs.get(what);
    if (known === undefined)
      needs.set(what, { checks: new Set([check]), panel: panels[0] ?? null });
    else known.checks.add(check);
  }
  return [...needs].map(([what, { checks, panel }]) => ({
    needs: what,
    checks: [...checks],
    panel,
  }));
}
