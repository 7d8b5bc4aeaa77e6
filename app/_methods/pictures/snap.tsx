import { methodPictures as words } from "../../_words";
import { Curve } from "../curve";
import { Dot } from "../dot";
import { GroundLine } from "../ground-line";
import { Label } from "../label";
import { Picture } from "../picture";
import { Span } from "../span";

const BEND = [
  { x: 24, y: 118 },
  { x: 92, y: 76 },
  { x: 156, y: 92 },
  { x: 180, y: 146 },
  { x: 204, y: 84 },
  { x: 252, y: 58 },
  { x: 300, y: 112 },
];

export function SnapPicture() {
  return (
    <Picture check="snap">
      <GroundLine y={150} />
      <Curve
        through={[BEND[0], BEND[1], BEND[2], { x: 204, y: 84 }, BEND[5], BEND[6]].filter(
          (at) => at !== undefined,
        )}
        ghost
      />
      <Curve through={BEND} />
      <Span from={{ x: 180, y: 90 }} to={{ x: 180, y: 138 }} />
      <Dot at={{ x: 180, y: 146 }} />
      <Label x={180} y={76}>
        {words.snaps}
      </Label>
      <Label x={20} y={28} anchor="start" quiet>
        {words.bend}
      </Label>
      <Label x={304} y={174} anchor="end" quiet>
        {words.time}
      </Label>
    </Picture>
  );
}
