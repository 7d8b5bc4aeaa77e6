import type { LimbJoint } from "../../body";
import { LIMB_JOINTS } from "../../body";
import type { View } from "../../geometry";
import type { Remark } from "../finding";
import type { FixChange } from "../fix";
import { armRows, linksOf } from "../leg-rows";
import type { Study } from "../study";
import type { Proposal } from "./proposal";

const LEGS: readonly LimbJoint[] = ["hip", "knee", "ankle", "heel", "ball", "toe"];

/**
 * Left and right that change places: exchanged in that panel, with the arms where they changed places, too.
 * A remark names two panels, so the one in which it helps is found by trying.
 */
export function fixSides(study: Study, { panels, spots }: Remark): readonly Proposal[] {
  const views = [...new Set(spots.map(({ view }) => view))];
  return panels.toReversed().flatMap((panel) => {
    const frame = study.walk.panels.find(({ id }) => id === panel)?.frame;
    if (frame === undefined) return [];
    const changes = views.map((view): FixChange => {
      const joints = armsChange(study, panel, view) ? LIMB_JOINTS : LEGS;
      return { kind: "exchange-sides", panel, view, joints };
    });
    return [{ title: `Exchange left and right at frame ${frame}`, changes }];
  });
}

/** Whether a panel's arms would go a shorter way exchanged. */
function armsChange(study: Study, id: string, view: View): boolean {
  const rows = armRows(study, view);
  const links = linksOf(study, rows);
  const at = rows.findIndex(({ panel }) => panel.id === id);
  if (at === -1) return true;
  return (links[at - 1]?.costs ?? 0) + (links[at]?.costs ?? 0) < 0;
}
