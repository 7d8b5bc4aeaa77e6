import { methodPictures as words } from "../../_words";
import { Curve } from "../curve";
import { GroundLine } from "../ground-line";
import { Guide } from "../guide";
import { Label } from "../label";
import { Picture } from "../picture";
import { Span } from "../span";

const LOW = 104;
const HIGH = 52;
const WAVE = [
  { x: 20, y: LOW - 8 },
  { x: 46, y: LOW },
  { x: 104, y: HIGH },
  { x: 162, y: LOW },
  { x: 220, y: HIGH },
  { x: 262, y: LOW - 8 },
];

export function HipRangePicture() {
  return (
    <Picture check="hip-range">
      <GroundLine />
      <Guide from={{ x: 20, y: HIGH }} to={{ x: 288, y: HIGH }} />
      <Guide from={{ x: 20, y: LOW }} to={{ x: 288, y: LOW }} />
      <Curve through={WAVE} />
      <Span from={{ x: 280, y: HIGH }} to={{ x: 280, y: LOW }} />
      <Label x={306} y={126} anchor="end">
        {words.range}
      </Label>
    </Picture>
  );
}
