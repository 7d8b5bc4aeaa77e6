import { PANEL, type Stretch } from "../body";
import { placeOf, walkLegLength } from "../gait";
import { type Panel, type Sheet, walkOf } from "../sheet";

/**
 * The stretch of ground each panel of a sheet looks at, as it is drawn. Without the marks that tell
 * how long the leg is, a plain figure's is taken: this only spaces ticks, nothing is read off it.
 *
 * Units:   place in leg lengths, leg length in panel units
 */
export function groundUnder(sheet: Sheet): (panel: Panel) => Stretch {
  const walk = walkOf(sheet);
  const leg = walkLegLength(walk);
  const legLength = leg.kind === "value" && leg.value > 0 ? leg.value : PANEL.plainLeg;
  return (panel) => {
    const place = placeOf(panel, walk);
    return { place: Number.isFinite(place) ? place : 0, legLength };
  };
}
