/**
 * How the body above the legs moves through a step: the side that carries, and the other.
 * Units: leg lengths and radians.
 */
export interface BodySwing {
  /** The carrying hip ahead of the middle between the hips, and above it; the other is opposite. */
  readonly hip: { readonly ahead: number; readonly up: number };
  readonly shoulder: { readonly ahead: number; readonly up: number };
  /** The hips aside of the middle between the feet's tracks, toward the carrying foot. */
  readonly shift: number;
  readonly carrying: ArmSwing;
  readonly other: ArmSwing;
}

export interface ArmSwing {
  /** From hanging straight down; the elbow ahead of the shoulder is positive. Radians. */
  readonly upperArm: number;
  /** The elbow's bend, forward. Radians. */
  readonly elbow: number;
  /** Seen from the front, how far the elbow and the wrist stand out from the shoulder. Leg lengths. */
  readonly elbowOut: number;
  readonly wristOut: number;
}

/**
 * Rows: share of the step; hip ahead, up; shoulder ahead, up; shift (all leg lengths); then for the
 * carrying side and the other: upper arm and elbow (degrees), elbow and wrist out (leg lengths).
 * Source: medians of 28 steps of six captured walks (CMU database, clips 05_01 07_01 16_15 16_22 35_08
 * 39_01) at contact, down, highest hips and passing, at the shares where captured walks have those; sd
 * 0.005 for the hips, 0.01 for the shoulders, 0.015 for the shift, 3 to 11 degrees for the arms. Published arm
 * angles by the share of the step were not at hand.
 */
const STEP: readonly (readonly number[])[] = [
  [0, 0.007, -0.008, -0.01, -0.001, -0.024, -15.2, 18.5, -0.009, 0.029, 6.2, 37.8, 0.051, 0.078],
  [
    0.07, 0.007, -0.007, -0.011, -0.007, -0.014, -14.1, 17.2, -0.012, 0.022, 5.5, 37.7, 0.052,
    0.078,
  ],
  [0.5, 0.003, 0.004, 0.001, -0.005, 0.028, -5.5, 22.3, 0.015, 0.041, -3.8, 27.6, 0.022, 0.043],
  [0.6, 0, 0.005, 0.004, -0.007, 0.027, -2.1, 25.5, 0.019, 0.046, -6.6, 25.8, 0.016, 0.039],
];

/**
 * The body above the legs at a moment of a step. At its end it is as at its beginning, sides exchanged.
 *
 * Units:   share of the step since the contact → leg lengths, radians
 * Errors:  RangeError unless the share is within 0 to 1
 * Source:  see `STEP`; straight lines between its rows
 */
export function bodySwing(shareOfStep: number): BodySwing {
  if (!(shareOfStep >= 0 && shareOfStep <= 1)) {
    throw new RangeError(`bodySwing needs a share within 0 to 1, got ${shareOfStep}`);
  }
  const rows = [...STEP, mirrored(STEP[0] ?? [])];
  const next = Math.max(
    1,
    rows.findIndex(([at]) => (at ?? 0) >= shareOfStep),
  );
  const [from, to] = [rows[next - 1] ?? [], rows[next] ?? []];
  const share = (shareOfStep - (from[0] ?? 0)) / ((to[0] ?? 1) - (from[0] ?? 0));
  const at = (column: number) => {
    const start = from[column] ?? 0;
    return start + share * ((to[column] ?? 0) - start);
  };
  return {
    hip: { ahead: at(1), up: at(2) },
    shoulder: { ahead: at(3), up: at(4) },
    shift: at(5),
    carrying: arm(at, 6),
    other: arm(at, 10),
  };
}

function arm(at: (column: number) => number, first: number): ArmSwing {
  const radians = (column: number) => (at(column) * Math.PI) / 180;
  return {
    upperArm: radians(first),
    elbow: radians(first + 1),
    elbowOut: at(first + 2),
    wristOut: at(first + 3),
  };
}

/** The contact that ends the step: what carried is now the other side. */
function mirrored(row: readonly number[]): readonly number[] {
  const pair = row.slice(1, 6).map((value) => -value);
  return [1, ...pair, ...row.slice(10, 14), ...row.slice(6, 10)];
}
