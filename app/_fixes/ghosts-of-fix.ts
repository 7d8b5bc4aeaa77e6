import { applyFix, type Fix, type WalkPanel } from "../../lib/gait";
import type { View } from "../../lib/geometry";
import type { Frame } from "../../lib/motion";
import { emptyPanel, type Panel, type PanelId, type Sheet, walkOf } from "../../lib/sheet";

/** What a fix would leave, where it can be seen before it is done. */
export interface FixGhosts {
  /** Panels as they would be, by id. */
  readonly after: ReadonlyMap<PanelId, WalkPanel>;
  /** Views whose marks would move: `panel view`. */
  readonly moved: ReadonlySet<string>;
  /** Frames that stems would go to, those of new panels among them. */
  readonly feet: ReadonlyMap<PanelId, Frame>;
  /** Panels that would be hung on the strip. */
  readonly added: readonly Panel[];
}

export const NO_GHOSTS: FixGhosts = {
  after: new Map(),
  moved: new Set(),
  feet: new Map(),
  added: [],
};

/** Works out the ghosts of a fix on a sheet. */
export function ghostsOfFix(sheet: Sheet, fix: Fix): FixGhosts {
  const { panels } = applyFix(walkOf(sheet), fix);
  const known = new Map(sheet.panels.map((panel) => [panel.id, panel]));
  const added = panels.filter(({ id }) => !known.has(id));
  const going = panels.filter(({ id, frame }) => known.get(id)?.frame !== frame);
  return {
    after: new Map(panels.map((panel) => [panel.id, panel])),
    moved: new Set(
      fix.changes.flatMap((change) =>
        change.kind === "move-marks" || change.kind === "exchange-sides"
          ? [ghostKey(change.panel, change.view)]
          : [],
      ),
    ),
    feet: new Map(going.map(({ id, frame }) => [id, frame])),
    added: added.map(undrawn),
  };
}

export function ghostKey(panel: PanelId, view: View): string {
  return `${panel} ${view}`;
}

function undrawn({ marks, ...panel }: WalkPanel): Panel {
  return { ...emptyPanel(panel), marks };
}
