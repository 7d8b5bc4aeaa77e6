import type { JointName } from "../../../lib/body";
import { methodPictures as words } from "../../_words";
import { Foot } from "../foot";
import { GroundLine } from "../ground-line";
import { Guide } from "../guide";
import { Label } from "../label";
import { PICTURE, Picture } from "../picture";
import { POSES } from "../poses";
import { Span } from "../span";
import { moved, spotsOf } from "../spots";

const FOOT: readonly JointName[] = [
  "right-knee",
  "right-ankle",
  "right-heel",
  "right-ball",
  "right-toe",
];
const GAP = 34;
const PLANTED = spotsOf(POSES.passing.side, { at: 84, ground: PICTURE.ground, scale: 0.8 });
const SPOTS = moved(PLANTED, FOOT, { x: 0, y: -GAP });

export function FloatPicture() {
  const heel = SPOTS("right-heel");
  const x = SPOTS("right-toe").x + 22;
  return (
    <Picture check="float">
      <GroundLine />
      <Foot spots={SPOTS} side="right" marked />
      <Guide from={heel} to={{ x: x + 6, y: heel.y }} />
      <Span from={{ x, y: heel.y }} to={{ x, y: PICTURE.ground }} />
      <Label x={x + 10} y={heel.y + GAP / 2 + 4} anchor="start">
        {words.gap}
      </Label>
    </Picture>
  );
}
