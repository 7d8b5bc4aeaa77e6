import { across, add, between, curve, sub, times, unit } from "./vector.mjs";

/** A limb of two parts: both outlines, and what they enclose. Widths are half widths, leg lengths. */
export function limb(pencil, [a, b, c], [wa, wb, wc], { firm = 0.62, tone = false } = {}) {
  const upper = across(unit(sub(b, a)));
  const lower = across(unit(sub(c, b)));
  const bend = across(unit(sub(c, a)));
  const side = (k, swell) => [
    add(a, times(upper, k * wa)),
    add(between(a, b, 0.45), times(upper, k * ((wa + wb) / 2 + swell))),
    add(b, times(bend, k * wb)),
    add(between(b, c, 0.38), times(lower, k * ((wb + wc) / 2 + swell))),
    add(c, times(lower, k * wc)),
  ];
  const left = curve(side(1, 0.014));
  const right = curve(side(-1, 0.004));
  const polygon = [...left, ...right.toReversed()];
  pencil.line(left, { firm });
  pencil.line(right, { firm });
  if (tone) hatch(pencil, [a, b, c], [wa, wb, wc]);
  pencil.solid(polygon);
}

/** Short slanting lines across a limb: it is the far one, in shade. */
function hatch(pencil, [a, b, c], [wa, wb, wc]) {
  for (let t = 0.5; t < 1.95; t += 0.075) {
    const [from, to, w] = t < 1 ? [a, b, wa + (wb - wa) * t] : [b, c, wb + (wc - wb) * (t - 1)];
    const middle = between(from, to, t % 1);
    const over = times(across(unit(sub(to, from))), w * 0.85);
    const along = times(unit(sub(to, from)), 0.03);
    pencil.line(curve([sub(sub(middle, over), along), middle, add(add(middle, over), along)]), {
      firm: 0.2,
      width: 0.7,
    });
  }
}

/** A boot seen from the side, standing as its heel, ball and toe do. */
export function boot(pencil, { ankle, heel, ball, toe }, firm) {
  const ahead = unit(sub(ball, heel));
  const up = across(ahead);
  const at = (from, forward, high) => add(from, add(times(ahead, forward), times(up, high)));
  const tip = add(toe, times(unit(sub(toe, ball)), 0.03));
  const back = curve([
    at(heel, -0.03, 0),
    at(heel, -0.035, 0.05),
    at(ankle, -0.07, 0.03),
    at(ankle, -0.078, 0.15),
  ]);
  const instep = curve([
    at(ankle, 0.082, 0.15),
    at(ankle, 0.07, 0.03),
    at(between(ankle, ball, 0.6), 0.01, 0.03),
    at(ball, 0.01, 0.065),
    at(tip, 0, 0.045),
    at(tip, 0.02, 0.012),
    tip,
  ]);
  const sole = curve([at(heel, -0.03, 0), between(heel, ball, 0.5), ball, tip]);
  const cuff = curve([at(ankle, -0.088, 0.15), at(ankle, 0, 0.165), at(ankle, 0.09, 0.15)]);
  pencil.line(back, { firm });
  pencil.line(instep, { firm });
  pencil.line(sole, { firm: firm * 1.2, width: 1.4, nib: "broad" });
  pencil.line(cuff, { firm: firm * 0.8 });
  pencil.solid([...back, ...cuff, ...instep, ...sole.toReversed()]);
}

/** A mitten at the end of an arm. */
export function hand(pencil, elbow, wrist, firm) {
  const along = unit(sub(wrist, elbow));
  const over = across(along);
  const at = (far, aside) => add(wrist, add(times(along, far), times(over, aside)));
  const outline = curve(
    [
      at(-0.02, 0.045),
      at(0.05, 0.05),
      at(0.11, 0.02),
      at(0.1, -0.03),
      at(0.03, -0.05),
      at(-0.02, -0.045),
    ],
    true,
  );
  pencil.line(outline, { firm });
  pencil.solid(outline);
}
