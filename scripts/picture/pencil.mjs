import { inside } from "./vector.mjs";

const FULL_WIDTH = 8; // panel units at pressure 1
const LEG = 420; // panel units
const GROUND = 1080; // panel units down the view

/**
 * Draws from near to far: a solid hides whatever is drawn after it, as a body hides what is behind.
 * Lines are in leg lengths, y up; strokes come out in panel units, pressure 0..1.
 */
export function openPencil(seed) {
  const dice = seeded(seed);
  const solids = [];
  const strokes = [];
  const put = (run, { firm, nib, weight }) => {
    if (run.length < 4) return;
    const phase = dice() * 6;
    const points = run.map(([x, y], i) => {
      const t = i / (run.length - 1);
      const waver = 1.2 * Math.sin(t * 6 + phase); // panel units: a hand, not a plotter
      const swell = 0.5 + 0.6 * Math.sin(Math.PI * Math.min(1, 0.12 + t * 0.86)) ** 0.6;
      return [x * LEG + waver, GROUND - y * LEG + waver * 0.7, Math.min(1, firm * swell)];
    });
    strokes.push({ nib, colour: nib === "under" ? "blue" : "graphite", width: weight, points });
  };
  return {
    strokes,
    solid: (polygon) => solids.push(polygon),
    /** Only the runs that nothing nearer hides become strokes. */
    line(points, { firm = 0.6, width = 1, nib = "fine" } = {}) {
      const how = { firm, nib, weight: FULL_WIDTH * width };
      let run = [];
      for (const point of points) {
        if (nib === "under" || !solids.some((solid) => inside(point, solid))) run.push(point);
        else {
          put(run, how);
          run = [];
        }
      }
      put(run, how);
    },
  };
}

/** Lehmer's generator: the same picture every time. */
function seeded(seed) {
  let state = seed;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}
