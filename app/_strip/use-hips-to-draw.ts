import { hipHeight, walkLegLength } from "../../lib/gait";
import { type Sheet, walkOf } from "../../lib/sheet";
import { useReview, useSheet } from "../_room";

/**
 * Whether the hip chart has anything to draw. As long as the sheet was not read its marks tell, so that the
 * chart has its height from the first and nothing moves when it is.
 */
export function useHipsToDraw(): boolean {
  const review = useReview();
  const expected = useSheet((sheet) => review === null && hasHips(sheet));
  if (review === null) return expected;
  return review.hipCurve.points.some(({ height }) => height.kind === "value");
}

function hasHips(sheet: Sheet): boolean {
  const walk = walkOf(sheet);
  const leg = walkLegLength(walk);
  return walk.panels.some((panel) => hipHeight(panel, leg).kind === "value");
}
