import type { Side } from "../../lib/body";

const DIAMOND = 1.3; // a diamond, and
const SQUARE = 0.85; // a square, that look as large as a circle of radius 1

/** A joint's sign around 0, as a path: left round, right diamond, neither square. */
export function signPath(side: Side | null, radius: number): string {
  if (side === "left") {
    const r = radius;
    return `M${-r} 0a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0z`;
  }
  const reach = radius * (side === "right" ? DIAMOND : SQUARE);
  return side === "right"
    ? `M0 ${-reach}l${reach} ${reach}l${-reach} ${reach}l${-reach} ${-reach}z`
    : `M${-reach} ${-reach}h${2 * reach}v${2 * reach}h${-2 * reach}z`;
}
