import type { Box } from "./shapes";

/**
 * The place nearest to the one wished for, up or down, that lies within the frame and touches
 * nothing that is covered; the one wished for where there is none.
 *
 * Units:   any one unit
 */
export function freePlace(wish: Box, covered: readonly Box[], frame: Box): Box {
  const step = wish.height * 1.1;
  const bottom = frame.y + frame.height - wish.height;
  const clamped = { ...wish, y: Math.min(Math.max(wish.y, frame.y), bottom) };
  for (let away = 0; away * step <= frame.height; away += 1) {
    for (const y of [clamped.y - away * step, clamped.y + away * step]) {
      const place = { ...clamped, y };
      const inside = y >= frame.y && y <= bottom;
      if (inside && covered.every((box) => !touch(box, place))) return place;
    }
  }
  return clamped;
}

function touch(one: Box, other: Box): boolean {
  return (
    one.x < other.x + other.width &&
    other.x < one.x + one.width &&
    one.y < other.y + other.height &&
    other.y < one.y + one.height
  );
}
