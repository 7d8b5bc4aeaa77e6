import { methodPictures as words } from "../../_words";
import { Curve } from "../curve";
import { Dot } from "../dot";
import { GroundLine } from "../ground-line";
import { Label } from "../label";
import { Picture } from "../picture";

const PATH = [
  { x: 18, y: 92 },
  { x: 78, y: 56 },
  { x: 134, y: 96 },
  { x: 176, y: 72 },
  { x: 200, y: 90 },
  { x: 248, y: 54 },
  { x: 302, y: 92 },
];

export function HitchPicture() {
  return (
    <Picture check="hitch">
      <GroundLine />
      <Curve
        through={[
          { x: 134, y: 96 },
          { x: 248, y: 54 },
        ]}
        ghost
      />
      <Curve through={PATH} />
      <Dot at={{ x: 176, y: 72 }} />
      <Dot at={{ x: 200, y: 90 }} />
      <Label x={188} y={124}>
        {words.bump}
      </Label>
    </Picture>
  );
}
