import { dark, Part, thin } from "../hand/part";
import type { Pencil } from "../hand/pencil";
import type { Placer } from "../hand/placer";

const CROWN = "122,104 132,146 150,182 116,216 24,228 -88,218 -172,180 -186,146 -156,118 -152,80";

/** A carrier's cap: soft crown, a band with a badge, a hard peak that shades the eyes. */
export function drawCap(pencil: Pencil, head: Placer): void {
  const part = new Part(pencil, head);
  const peak = "112,112 162,108 212,84 236,58 202,68 150,84 98,88";
  part.tone(peak, { gap: 0.024, firm: 0.55 });
  part.form(peak, { firm: 0.78, width: 7.2 });
  part.form("86,136 108,130 106,106 90,98 74,110", thin(0.58));
  part.line("-156,100 -80,104 0,115 78,119", dark(17));
  part.line("-152,80 -80,84 0,90 60,96 122,100", { firm: 0.66 });
  part.line("-157,122 -20,145 122,142", thin(0.52, 4.6));
  const crown = part.path(CROWN);
  pencil.line(crown, { firm: 0.68, outside: "left" });
  part.line("136,168 104,178 66,168", thin(0.42));
  part.line("-152,148 -100,168 -46,168", thin(0.44));
  part.tone("-178,150 -120,150 -80,205 -150,190", { gap: 0.048, firm: 0.3 });
  pencil.solid(crown);
}
