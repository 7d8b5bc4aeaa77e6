import type { Point } from "./point";

/**
 * Whether a point lies within a closed outline, by the even-odd rule; an outline may cross itself.
 *
 * Shapes:  corners in order, the first not repeated; fewer than three enclose nothing
 * Source:  counting the crossings of a ray (Shimrat 1962, Comm. ACM 5:434)
 *
 * @example
 * insidePolygon({ x: 1, y: 1 }, [{ x: 0, y: 0 }, { x: 3, y: 0 }, { x: 0, y: 3 }]); // => true
 */
export function insidePolygon({ x, y }: Point, corners: readonly Point[]): boolean {
  let inside = false;
  for (const [n, corner] of corners.entries()) {
    const before = corners.at(n - 1) ?? corner;
    if (corner.y > y === before.y > y) continue;
    const share = (y - corner.y) / (before.y - corner.y);
    if (x < corner.x + share * (before.x - corner.x)) inside = !inside;
  }
  return inside;
}
