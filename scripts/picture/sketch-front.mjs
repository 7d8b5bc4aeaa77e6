import { openPencil } from "./pencil.mjs";
import { add, between, curve, placer, sub, unit } from "./vector.mjs";
import { hand, limb } from "./walker-parts.mjs";

const UNDER = { nib: "under", firm: 0.35 };
const SIDES = { right: -1, left: 1 }; // he comes toward us: his left is on the page's right

/** The same walker from ahead. */
export function sketchFront(joints, seed) {
  const pencil = openPencil(seed);
  const hips = between(joints["left-hip"], joints["right-hip"], 0.5);
  const tall = (joints.neck[1] - hips[1]) / 0.6;
  const body = placer(hips, unit(sub(joints.neck, hips)));
  const trunk = (aside, high) => body(aside, high * tall);
  const support = between(joints["left-ankle"], joints["right-ankle"], 0.5);
  pencil.line(curve([add(joints.head, [0, 0.15]), joints.neck, hips, support]), UNDER);
  pencil.line(
    curve([trunk(-0.16, 0.42), trunk(0, 0.58), trunk(0.16, 0.42), trunk(0, 0.2)], true),
    UNDER,
  );
  head(pencil, joints.head);
  const scarf = curve(
    [
      trunk(-0.13, 0.6),
      trunk(0, 0.55),
      trunk(0.13, 0.6),
      trunk(0.11, 0.65),
      trunk(0, 0.62),
      trunk(-0.11, 0.65),
    ],
    true,
  );
  pencil.line(scarf);
  pencil.solid(scarf);
  for (const side of Object.keys(SIDES)) arm(pencil, joints, side);
  coat(pencil, hips, trunk);
  // the lower toe is the nearer one, and hides the other
  const nearer =
    joints["left-toe"][1] < joints["right-toe"][1] ? ["left", "right"] : ["right", "left"];
  for (const side of nearer) leg(pencil, joints, side);
  return pencil.strokes;
}

function arm(pencil, joints, side) {
  const [shoulder, elbow, wrist] = ["shoulder", "elbow", "wrist"].map(
    (p) => joints[`${side}-${p}`],
  );
  hand(pencil, elbow, wrist, 0.58);
  limb(pencil, [shoulder, elbow, wrist], [0.072, 0.062, 0.054]);
}

function leg(pencil, joints, side) {
  const [hip, knee, ankle, ball, toe] = ["hip", "knee", "ankle", "ball", "toe"].map(
    (p) => joints[`${side}-${p}`],
  );
  const sole = Math.min(ball[1], toe[1]);
  const k = SIDES[side];
  const at = (aside, high) => [ankle[0] + aside + k * 0.015, high];
  const top = ankle[1] + 0.13;
  const boot = curve([
    at(-0.078, top),
    at(-0.07, ankle[1]),
    at(-0.085, sole + 0.05),
    at(-0.07, sole),
    at(0.07, sole),
    at(0.085, sole + 0.05),
    at(0.07, ankle[1]),
    at(0.078, top),
  ]);
  pencil.line(boot, { firm: 0.62 });
  pencil.line(curve([at(-0.088, top), at(0, top - 0.015), at(0.088, top)]), { firm: 0.5 });
  pencil.line(curve([at(-0.06, sole + 0.03), at(0, sole + 0.02), at(0.065, sole + 0.03)]), {
    firm: 0.35,
  });
  pencil.solid(boot);
  limb(pencil, [hip, knee, [ankle[0] + k * 0.015, top]], [0.105, 0.082, 0.075], {
    tone: side === "left",
  });
}

function head(pencil, at) {
  const h = (aside, high) => add(at, [aside, high]);
  const shape = (points, how, closed = false) => {
    const line = curve(points, closed);
    pencil.line(line, how);
    pencil.solid(line);
  };
  shape([h(-0.02, 0.03), h(-0.038, -0.015), h(0, -0.038), h(0.038, -0.015), h(0.02, 0.03)]);
  shape(
    [h(-0.125, 0.085), h(-0.06, 0.055), h(0.06, 0.055), h(0.125, 0.085), h(0, 0.1)],
    { firm: 0.72 },
    true,
  );
  shape(
    [
      h(-0.135, 0.08),
      h(-0.165, 0.15),
      h(-0.08, 0.2),
      h(0.08, 0.2),
      h(0.165, 0.15),
      h(0.135, 0.08),
      h(0, 0.1),
    ],
    {},
    true,
  );
  pencil.line(curve([h(-0.045, -0.075), h(0, -0.082), h(0.045, -0.075)]), { firm: 0.5 });
  for (const k of [-1, 1]) {
    pencil.line(curve([h(k * 0.05, 0.032), h(k * 0.054, 0.022), h(k * 0.052, 0.01)]), {
      firm: 0.8,
      width: 1.3,
    });
    pencil.line(
      curve([h(k * 0.132, 0.03), h(k * 0.16, 0.03), h(k * 0.155, -0.03), h(k * 0.126, -0.035)]),
      { firm: 0.5 },
    );
  }
  shape([
    h(-0.13, 0.08),
    h(-0.132, -0.03),
    h(-0.095, -0.115),
    h(0, -0.15),
    h(0.095, -0.115),
    h(0.132, -0.03),
    h(0.13, 0.08),
  ]);
}

function coat(pencil, hips, trunk) {
  const hem = curve([add(hips, [-0.26, -0.3]), add(hips, [0, -0.335]), add(hips, [0.26, -0.3])]);
  const side = (k) =>
    curve([
      trunk(k * 0.12, 0.6),
      trunk(k * 0.24, 0.56),
      trunk(k * 0.25, 0.38),
      trunk(k * 0.215, 0.12),
      add(hips, [k * 0.26, -0.3]),
    ]);
  pencil.line(side(-1), { width: 1.2, firm: 0.66 });
  pencil.line(side(1), { width: 1.2, firm: 0.66 });
  pencil.line(hem);
  for (const high of [0.1, 0.06]) {
    pencil.line(curve([trunk(-0.22, high), trunk(0, high - 0.02), trunk(0.22, high)]), {
      firm: 0.5,
    });
  }
  pencil.line(
    curve([trunk(0.03, 0.54), trunk(0.04, 0.3), trunk(0.04, 0.05), add(hips, [0.05, -0.32])]),
    { firm: 0.42 },
  );
  for (const high of [0.44, 0.32, 0.2]) {
    pencil.line(
      curve([trunk(-0.012, high), trunk(0.006, high + 0.012), trunk(0.004, high - 0.012)]),
      { firm: 0.6 },
    );
  }
  pencil.solid([...side(-1), ...hem, ...side(1).toReversed()]);
}
