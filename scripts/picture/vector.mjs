/** Points are [x, y] in leg lengths, y up from the ground. */
export const add = (a, b) => [a[0] + b[0], a[1] + b[1]];
export const sub = (a, b) => [a[0] - b[0], a[1] - b[1]];
export const times = (a, k) => [a[0] * k, a[1] * k];
export const length = (a) => Math.hypot(a[0], a[1]);
export const unit = (a) => times(a, 1 / (length(a) || 1));
export const across = (a) => [-a[1], a[0]];
export const between = (a, b, t) => [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];

/** A place told by how far ahead of, and how far up from, an origin; `up` tells which way that is. */
export function placer(origin, up) {
  const ahead = [up[1], -up[0]];
  return (forward, high) => add(origin, add(times(ahead, forward), times(up, high)));
}

const STEP = 0.014; // leg lengths between samples of a curve

/** A smooth curve through the points (Catmull and Rom's), sampled. */
export function curve(points, closed = false) {
  const last = points.length - 1;
  const at = (i) => points.at(closed ? i % points.length : Math.max(0, Math.min(last, i)));
  const out = [];
  for (let i = 0; i < (closed ? points.length : last); i++) {
    const [a, b, c, d] = [at(i - 1), at(i), at(i + 1), at(i + 2)];
    const samples = Math.max(2, Math.ceil(length(sub(c, b)) / STEP));
    for (let k = 0; k < samples; k++) out.push(onCurve(a, b, c, d, k / samples));
  }
  out.push(closed ? out[0] : points[last]);
  return out;
}

function onCurve(a, b, c, d, t) {
  return [0, 1].map(
    (j) =>
      0.5 *
      (2 * b[j] +
        (c[j] - a[j]) * t +
        (2 * a[j] - 5 * b[j] + 4 * c[j] - d[j]) * t ** 2 +
        (3 * b[j] - a[j] - 3 * c[j] + d[j]) * t ** 3),
  );
}

/** Is the point inside the polygon? Counts the sides that a ray to the right crosses. */
export function inside([x, y], polygon) {
  let within = false;
  for (let i = 0, j = polygon.length - 1; i < polygon.length; j = i++) {
    const [ax, ay] = polygon[i];
    const [bx, by] = polygon[j];
    if (ay > y !== by > y && x < ((bx - ax) * (y - ay)) / (by - ay) + ax) within = !within;
  }
  return within;
}
