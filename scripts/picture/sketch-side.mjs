import { openPencil } from "./pencil.mjs";
import { add, between, curve, placer, sub, unit } from "./vector.mjs";
import { boot, hand, limb } from "./walker-parts.mjs";

const UNDER = { nib: "under", firm: 0.35 };

/** A walker in coat and cap, seen from his right; he goes to the page's right. */
export function sketchSide(joints, seed) {
  const pencil = openPencil(seed);
  const hips = between(joints["left-hip"], joints["right-hip"], 0.5);
  const shoulders = between(joints["left-shoulder"], joints["right-shoulder"], 0.5);
  const up = unit(sub(joints.neck, hips));
  const body = placer(hips, up);
  const tall = (joints.neck[1] - hips[1]) / 0.6; // the trunk's measures below are of one 0.6 high
  const trunk = (forward, high) => body(forward, high * tall);
  underDrawing(pencil, joints, hips, trunk);
  arm(pencil, joints, "right", 0.64);
  head(pencil, joints);
  scarf(pencil, trunk);
  coat(pencil, joints, hips, trunk);
  arm(pencil, joints, "left", 0.4, add(shoulders, [0.05, -0.02]));
  leg(pencil, joints, "right", 0.64);
  leg(pencil, joints, "left", 0.42);
  return pencil.strokes;
}

function underDrawing(pencil, joints, hips, trunk) {
  const { head, neck } = joints;
  pencil.line(curve([add(head, [0.02, 0.14]), neck, trunk(-0.02, 0.35), hips]), UNDER);
  pencil.line(
    curve([trunk(-0.14, 0.42), trunk(0, 0.58), trunk(0.13, 0.42), trunk(0, 0.18)], true),
    UNDER,
  );
  for (const side of ["left", "right"]) {
    const [hip, knee, ankle] = ["hip", "knee", "ankle"].map((part) => joints[`${side}-${part}`]);
    pencil.line(curve([hip, knee, ankle]), UNDER);
  }
}

function arm(pencil, joints, side, firm, shoulder = joints[`${side}-shoulder`]) {
  const elbow = joints[`${side}-elbow`];
  const wrist = joints[`${side}-wrist`];
  hand(pencil, elbow, wrist, firm);
  limb(pencil, [shoulder, elbow, wrist], [0.078, 0.062, 0.056], { firm });
}

function leg(pencil, joints, side, firm) {
  const [hip, knee, ankle, heel, ball, toe] = ["hip", "knee", "ankle", "heel", "ball", "toe"].map(
    (part) => joints[`${side}-${part}`],
  );
  boot(pencil, { ankle, heel, ball, toe }, firm);
  const shaft = between(ankle, knee, 0.3);
  limb(pencil, [hip, knee, shaft], [0.12, 0.086, 0.076], { firm, tone: side === "left" });
}

function head(pencil, { head: at, neck }) {
  const h = placer(at, unit(add(unit(sub(at, neck)), [0, 1.5])));
  const shape = (points, how, closed = false) => {
    const line = curve(points, closed);
    pencil.line(line, how);
    pencil.solid(line);
  };
  shape([h(0.12, 0.04), h(0.17, 0.02), h(0.185, -0.01), h(0.15, -0.025), h(0.12, -0.02)]);
  shape([h(0.09, 0.105), h(0.18, 0.1), h(0.24, 0.07), h(0.18, 0.076), h(0.1, 0.078)], {
    firm: 0.75,
  });
  shape(
    [
      h(-0.15, 0.06),
      h(-0.165, 0.13),
      h(-0.09, 0.195),
      h(0.03, 0.2),
      h(0.115, 0.16),
      h(0.13, 0.1),
      h(0, 0.08),
    ],
    {},
    true,
  );
  pencil.line(curve([h(0.03, -0.06), h(0.07, -0.068), h(0.11, -0.06)]), { firm: 0.45 });
  pencil.line(curve([h(0.088, 0.04), h(0.095, 0.03), h(0.09, 0.018)]), { firm: 0.8, width: 1.3 });
  pencil.line(curve([h(-0.03, 0.03), h(-0.065, 0.03), h(-0.06, -0.02), h(-0.03, -0.02)]), {
    firm: 0.5,
  });
  shape([
    h(-0.145, 0.07),
    h(-0.15, -0.01),
    h(-0.115, -0.08),
    h(-0.06, -0.125),
    h(0.03, -0.145),
    h(0.1, -0.125),
    h(0.125, -0.07),
    h(0.125, 0.06),
  ]);
}

function scarf(pencil, trunk) {
  const line = curve(
    [trunk(-0.11, 0.58), trunk(-0.02, 0.65), trunk(0.1, 0.61), trunk(0.12, 0.55), trunk(0, 0.53)],
    true,
  );
  pencil.line(line);
  pencil.solid(line);
  const end = curve([
    trunk(-0.1, 0.58),
    trunk(-0.2, 0.54),
    trunk(-0.27, 0.56),
    trunk(-0.28, 0.49),
    trunk(-0.19, 0.47),
    trunk(-0.1, 0.54),
  ]);
  pencil.line(end, { firm: 0.55 });
  pencil.solid(end);
}

function coat(pencil, joints, hips, trunk) {
  const knees = [joints["left-knee"][0] - hips[0], joints["right-knee"][0] - hips[0]];
  const front = Math.max(...knees);
  const rear = Math.min(...knees);
  const hemFront = add(hips, [Math.max(0.19, front * 0.75 + 0.08), -0.3 + Math.abs(front) * 0.1]);
  const hemRear = add(hips, [Math.min(-0.17, rear * 0.8 - 0.08), -0.28 + Math.abs(rear) * 0.1]);
  const back = curve([
    trunk(-0.1, 0.57),
    trunk(-0.17, 0.46),
    trunk(-0.18, 0.28),
    trunk(-0.15, 0.08),
    hemRear,
  ]);
  const chest = curve([
    trunk(0.1, 0.56),
    trunk(0.17, 0.42),
    trunk(0.185, 0.24),
    trunk(0.17, 0.06),
    hemFront,
  ]);
  const hem = curve([hemRear, add(between(hemRear, hemFront, 0.5), [0, -0.03]), hemFront]);
  pencil.line(back, { width: 1.2, firm: 0.7 });
  pencil.line(chest, { width: 1.2, firm: 0.7 });
  pencil.line(hem);
  for (const high of [0.1, 0.06]) {
    pencil.line(curve([trunk(-0.15, high), trunk(0.02, high - 0.03), trunk(0.175, high)]), {
      firm: 0.5,
    });
  }
  pencil.line(curve([trunk(-0.06, 0.02), add(between(hips, hemRear, 0.5), [0.05, 0])]), {
    firm: 0.35,
  });
  pencil.solid([...back, ...hem, ...chest.toReversed()]);
}
