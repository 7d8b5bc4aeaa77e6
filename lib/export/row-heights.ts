/** Heights of what stands in a row of the strip besides its papers. Units: page units. */
export interface RowHeights {
  readonly stems: number;
  readonly numbers: number;
  readonly hips: number;
}

export const LABEL_HEIGHT = 30;
export const FOOTFALLS_HEIGHT = 48;
export const GAPS_HEIGHT = 28;
export const CHART_GAP = 7;
export const VIEW_GAP = 10;
export const ROW_GAP = 40;

const NUMBERS_HEIGHT = 38;
const SHOT_NUMBERS_HEIGHT = 19; // the shot's own frame numbers, under the sheet's
const LOW = { stems: 28, hips: 68 };
const COMFORTABLE = { stems: 58, hips: 92 };
const HIGH = { stems: 120, hips: 260 };

/** Which numbers stand under the ruler, and whether height is scarce. */
export interface RowNeeds {
  readonly shotNumbers: boolean;
  readonly scarce: boolean;
}

/** The heights of a row that has so much height to spare; it takes what serves reading. */
export function rowHeights({ shotNumbers, scarce }: RowNeeds, spare: number): RowHeights {
  const least = scarce ? LOW : COMFORTABLE;
  return {
    stems: Math.min(HIGH.stems, least.stems + spare * 0.3),
    hips: Math.min(HIGH.hips, least.hips + spare * 0.55),
    numbers: NUMBERS_HEIGHT + (shotNumbers ? SHOT_NUMBERS_HEIGHT : 0),
  };
}

/** The height of a row without its papers. */
export function heightBesides({ stems, numbers, hips }: RowHeights): number {
  const charts = hips + CHART_GAP + FOOTFALLS_HEIGHT + CHART_GAP + GAPS_HEIGHT;
  return LABEL_HEIGHT + stems + numbers + charts;
}
