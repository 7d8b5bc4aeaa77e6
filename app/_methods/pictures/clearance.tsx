import { methodPictures as words } from "../../_words";
import { Dot } from "../dot";
import { Figure } from "../figure";
import { GroundLine } from "../ground-line";
import { Label } from "../label";
import { PICTURE, Picture } from "../picture";
import { POSES } from "../poses";
import { Span } from "../span";
import { moved, spotsOf } from "../spots";

const SPOTS = moved(
  spotsOf(POSES.passing.side, { at: 140, ground: PICTURE.ground, scale: 0.17 }),
  ["left-knee", "left-ankle", "left-heel", "left-ball", "left-toe"],
  { x: 14, y: -14 },
);

export function ClearancePicture() {
  const toe = SPOTS("left-toe");
  return (
    <Picture check="clearance">
      <GroundLine />
      <Figure spots={SPOTS} marks={["toe"]} />
      <Dot at={toe} />
      <Span from={toe} to={{ x: toe.x, y: PICTURE.ground }} />
      <Label x={toe.x + 10} y={PICTURE.ground - 6} anchor="start">
        {words.clearance}
      </Label>
    </Picture>
  );
}
