import { hatch } from "../hand/hatch";
import { dark, Part, thin } from "../hand/part";
import type { Pencil } from "../hand/pencil";
import type { Placer } from "../hand/placer";

const PEAK =
  "-126,98,100 -100,64,180 -46,46,220 0,42,230 46,46,220 100,64,180 126,98,100 70,88,130 0,84,140 -70,88,130";
const CROWN =
  "-140,94,0 -152,140,0 -188,172,0 -180,208,0 -100,234,0 0,240,0 100,234,0 180,208,0 188,172,0 152,140,0 140,94,0";

/** The cap from ahead: the peak comes out over the eyes. */
export function drawCapFront(pencil: Pencil, head: Placer): void {
  const part = new Part(pencil, head);
  part.form("0,140,130 27,121,130 19,96,130 -19,96,130 -27,121,130", thin(0.58, 4.4));
  hatch(pencil, part.path(PEAK, true), { along: { x: 0.2, y: 1 }, gap: 0.036, firm: 0.46 });
  part.form(PEAK, { firm: 0.76, width: 7 });
  part.line("-152,124,30 -90,118,110 -22,117,128", dark(17));
  part.line("22,117,128 90,118,110 152,124,30", dark(17));
  part.line("-140,98,40 -80,90,120 0,86,140 80,90,120 140,98,40", thin(0.56, 5));
  part.line("-150,142,40 -80,144,120 0,146,130 80,144,120 150,142,40", thin(0.52, 4.6));
  const crown = part.path(CROWN);
  pencil.line(crown, { firm: 0.68, outside: "left" });
  part.line("-162,178,60 -80,168,120 -28,170,120", thin(0.42));
  part.line("60,166,120 112,170,100 164,182,60", thin(0.44));
  part.tone("110,160,60 176,176,20 172,204,10 110,222,10", { gap: 0.048, firm: 0.3 });
  pencil.solid(crown);
}
