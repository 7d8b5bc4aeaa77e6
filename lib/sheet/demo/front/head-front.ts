import { Part, thin } from "../hand/part";
import type { Pencil } from "../hand/pencil";
import type { Placer } from "../hand/placer";
import { drawCapFront } from "./cap-front";
import type { FrontFigure } from "./front-figure";

const FACE =
  "-134,100,20 -141,20,20 -134,-60,30 -100,-124,50 -46,-160,70 0,-167,75 46,-160,70 100,-124,50 134,-60,30 141,20,20 134,100,20";
const SHADE = "74,-70,60 130,-50,30 102,-120,50 46,-154,70";
const NOSE =
  "-18,32,150 -27,6,170 -40,-14,180 -32,-42,180 0,-53,190 32,-42,180 40,-14,180 27,6,170 20,28,150";

/** Head, face and cap from ahead, about the middle of the head. */
export function drawHeadFront(pencil: Pencil, { head, pose }: FrontFigure): void {
  const part = new Part(pencil, head);
  for (const nostril of ["-36,-38,150 -51,-27,140 -46,-6,140", "36,-38,150 51,-27,140 46,-6,140"]) {
    part.line(nostril, thin(0.6, 4.6));
  }
  const nose = part.path(NOSE);
  pencil.line(nose, { width: 5.4, firm: 0.62, outside: "right" });
  pencil.solid(nose);
  drawMoustache(part, pose.effort);
  drawCapFront(pencil, head);
  for (const side of [mirrored(head), head]) drawHalf(new Part(pencil, side), pose.effort);
  const face = part.path(FACE);
  part.line("-22,-136,100 0,-141,100 22,-136,100", thin(0.44));
  part.tone(SHADE, { gap: 0.04, firm: 0.32 });
  pencil.line(face, { firm: 0.64, outside: "right" });
  pencil.solid(face);
  for (const side of [mirrored(head), head]) {
    new Part(pencil, side).form(
      "136,36,-20 165,46,-30 173,10,-30 157,-32,-30 134,-36,-20",
      thin(0.58, 5),
    );
  }
}

/** What stands on one side of the face stands on the other the other way round. */
export function mirrored(place: Placer): Placer {
  return (aside, up, ahead) => place(-aside, up, ahead);
}

/** Brow, eye, cheek and sideburn of one side. */
function drawHalf(part: Part, effort: number): void {
  drawEye(part, effort);
  const low = 0.016 * effort; // the brow is pulled down to the nose as it gets heavy
  part.line(
    [
      [0.024, 0.06 - low, 0.14],
      [0.058, 0.073 - low * 0.5, 0.13],
      [0.096, 0.06, 0.11],
    ],
    thin(0.68, 7.6),
  );
  part.line("90,-18,110 104,-40,100 101,-68,100", thin(0.42));
  part.line("137,38,20 132,8,30 124,-10,40", thin(0.44));
}

/** Wide awake when it goes easily, screwed up at the down. */
function drawEye(part: Part, effort: number): void {
  const lid = 0.026 - 0.008 * effort;
  const shut = effort > 0.85;
  const arch = shut ? 0.003 : 0.011;
  part.line(
    [
      [0.032, lid - 0.004, 0.13],
      [0.056, lid + arch, 0.13],
      [0.082, lid - 0.002, 0.12],
    ],
    thin(shut ? 0.8 : 0.7, 5.6),
  );
  part.line(
    [
      [0.038, lid - 0.023, 0.13],
      [0.056, lid - 0.029, 0.13],
      [0.073, lid - 0.022, 0.12],
    ],
    thin(0.42),
  );
  if (shut)
    part.line(
      [
        [0.084, lid, 0.11],
        [0.095, lid + 0.009, 0.1],
        [0.104, lid + 0.011, 0.1],
      ],
      thin(0.52),
    );
  else
    part.line(
      [
        [0.054, lid + 0.006, 0.13],
        [0.057, lid - 0.005, 0.13],
        [0.054, lid - 0.016, 0.13],
      ],
      thin(0.92, 8.4),
    );
}

/** A walrus moustache: it blows out with the effort. */
function drawMoustache(part: Part, effort: number): void {
  const puff = 0.014 * effort;
  const half = (k: 1 | -1) =>
    [
      [0, -0.05, 0.15],
      [k * 0.045, -0.045, 0.15],
      [k * (0.094 + puff), -0.063, 0.12],
      [k * (0.122 + puff), -0.102, 0.1],
      [k * 0.09, -0.114, 0.11],
      [k * 0.05, -0.108 - puff, 0.13],
      [0, -0.093 - puff * 0.5, 0.15],
    ] as const;
  for (const k of [-1, 1]) {
    for (const s of [0.05]) {
      part.line(
        [
          [k * s * 0.8, -0.062, 0.14],
          [k * s, -0.082, 0.14],
          [k * (s + 0.01), -0.102, 0.13],
        ],
        thin(0.46),
      );
    }
  }
  part.form([...half(-1), ...half(1).toReversed()], { width: 5.2, firm: 0.62 });
}
