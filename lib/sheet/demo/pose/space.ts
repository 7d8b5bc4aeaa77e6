/** A place on or over the ground: x the way he goes, y up, z to his right. Leg lengths. */
export interface Place {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** How a part of the body is turned. Degrees. */
export interface Turn {
  /** Left side forward. */
  readonly yaw?: number;
  /** Left side down. */
  readonly roll?: number;
  /** Forward. */
  readonly lean?: number;
}

export const at = (x: number, y: number, z: number): Place => ({ x, y, z });

export function plus(a: Place, b: Place, k = 1): Place {
  return { x: a.x + b.x * k, y: a.y + b.y * k, z: a.z + b.z * k };
}

export function gap(from: Place, to: Place): Place {
  return plus(to, from, -1);
}

export function sizeOf({ x, y, z }: Place): number {
  return Math.hypot(x, y, z);
}

/** The part of `a` that lies square to the way of `b`, one long. */
export function squareTo(a: Place, b: Place): Place {
  const share = (a.x * b.x + a.y * b.y + a.z * b.z) / sizeOf(b) ** 2;
  const rest = plus(a, b, -share);
  return plus(at(0, 0, 0), rest, 1 / sizeOf(rest));
}

/** Rolled first, then leant, then yawed. */
export function turn({ x, y, z }: Place, { yaw = 0, roll = 0, lean = 0 }: Turn): Place {
  const [rc, rs] = cosSin(roll);
  const rolled = { x, y: y * rc + z * rs, z: z * rc - y * rs };
  const [lc, ls] = cosSin(lean);
  const leant = { x: rolled.x * lc + rolled.y * ls, y: rolled.y * lc - rolled.x * ls, z: rolled.z };
  const [yc, ys] = cosSin(yaw);
  return { x: leant.x * yc - leant.z * ys, y: leant.y, z: leant.x * ys + leant.z * yc };
}

function cosSin(degrees: number): readonly [number, number] {
  const angle = (degrees * Math.PI) / 180;
  return [Math.cos(angle), Math.sin(angle)];
}
