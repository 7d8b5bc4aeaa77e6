import { Part, thin } from "../hand/part";
import type { Pencil } from "../hand/pencil";
import { drawCap } from "./cap-side";
import type { SideFigure } from "./side-figure";

/** Forehead to the root of the nose, and from under the moustache round to the nape. */
const BROW = "113,104 117,74 116,50";
const JAW = "113,-98 109,-128 70,-160 10,-152 -50,-114 -100,-86 -140,-50 -151,10 -148,100";
const JAW_SHADE = "-20,-75 50,-100 70,-150 0,-150 -100,-85";

/** Head, face and cap in profile, about the middle of the head. */
export function drawHead(pencil: Pencil, { head, pose }: SideFigure): void {
  const part = new Part(pencil, head);
  drawMoustache(part, pose.effort);
  part.line("128,-20 148,-10 156,-22", thin(0.55));
  const nose = part.path("116,48 140,28 176,6 197,-20 184,-47 150,-49 124,-34");
  pencil.line(nose, { firm: 0.66, outside: "left" });
  pencil.solid(nose);
  drawCap(pencil, head);
  drawEye(part, pose.effort);
  drawEarAndHair(pencil, part);
  part.line("98,-10 86,-34 70,-44", thin(0.42));
  part.line("112,40 106,28 110,16", thin(0.36));
  part.line(BROW, { firm: 0.6, outside: "left" });
  part.line(JAW, { firm: 0.62, outside: "right" });
  part.tone(JAW_SHADE, { gap: 0.04, firm: 0.3 });
  pencil.solid(part.path(`${BROW} ${JAW}`));
}

/** A walrus moustache: it blows out with the effort. */
function drawMoustache(part: Part, effort: number): void {
  const puff = 0.016 * effort;
  for (const k of [0, 1, 2]) {
    const f = 0.084 + k * 0.026;
    part.line(
      [
        [f + 0.026, -0.054],
        [f + 0.012 + puff, -0.08],
        [f - 0.002, -0.1],
      ],
      thin(0.48),
    );
  }
  part.form(
    [
      [0.126, -0.04],
      [0.16 + puff, -0.056],
      [0.17 + puff, -0.086],
      [0.146 + puff, -0.114],
      [0.112, -0.109],
      [0.076, -0.125],
      [0.048, -0.11],
      [0.062, -0.078],
      [0.094, -0.052],
    ],
    { width: 5.2, firm: 0.64 },
  );
}

/** Wide awake when it goes easily, screwed up at the down. */
function drawEye(part: Part, effort: number): void {
  const lid = 0.032 - 0.007 * effort;
  const shut = effort > 0.85;
  part.line(
    [
      [0.05, lid - 0.004],
      [0.07, lid + (shut ? 0.002 : 0.01)],
      [0.098, lid + 0.001],
    ],
    thin(shut ? 0.8 : 0.72, 6),
  );
  if (shut) {
    part.line(
      [
        [0.048, lid],
        [0.036, lid + 0.012],
        [0.026, lid + 0.016],
      ],
      thin(0.55),
    );
    part.line(
      [
        [0.048, lid - 0.006],
        [0.036, lid - 0.01],
        [0.028, lid - 0.008],
      ],
      thin(0.5),
    );
  } else {
    part.line(
      [
        [0.08, lid + 0.004],
        [0.083, lid - 0.006],
        [0.079, lid - 0.017],
      ],
      thin(0.95, 9.4),
    );
  }
  part.line(
    [
      [0.054, lid - 0.024],
      [0.07, lid - 0.031],
      [0.088, lid - 0.025],
    ],
    thin(0.42),
  );
  const low = 0.016 * effort; // a bushy brow, pulled down to the nose as it gets heavy
  part.line(
    [
      [0.04, 0.066 - low * 0.1],
      [0.076, 0.078 - low * 0.6],
      [0.114, 0.066 - low],
    ],
    thin(0.7, 8),
  );
}

function drawEarAndHair(pencil: Pencil, part: Part): void {
  const ear = part.path("-30,30 -52,48 -80,32 -78,-8 -54,-42 -34,-30");
  part.line("-44,26 -64,20 -62,-8 -46,-14", thin(0.45));
  pencil.line(ear, { width: 5, firm: 0.6, outside: "left" });
  pencil.solid(ear);
  for (const lock of [
    "-18,44 -15,10 -28,-20",
    "-4,30 -2,-6 -16,-40",
    "-98,32 -124,20 -142,6",
    "-96,0 -122,-12 -138,-28",
  ]) {
    part.line(lock, thin(0.45));
  }
}
