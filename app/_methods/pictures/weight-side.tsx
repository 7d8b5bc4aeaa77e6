import { methodPictures as words } from "../../_words";
import { Dot } from "../dot";
import { Figure } from "../figure";
import { GroundLine } from "../ground-line";
import { Guide } from "../guide";
import { Label } from "../label";
import { PICTURE, Picture } from "../picture";
import { POSES } from "../poses";
import { Span } from "../span";
import { spotsOf } from "../spots";

const GROUND = PICTURE.ground - 8;
const SPOTS = spotsOf(POSES.passing.side, { at: 160, ground: GROUND, scale: 0.31 });

export function WeightSidePicture() {
  const hips = SPOTS("right-hip");
  const ankle = SPOTS("right-ankle");
  const under = GROUND + 10;
  return (
    <Picture check="weight-side">
      <GroundLine y={GROUND} />
      <Figure spots={SPOTS} marks={["ankle", "heel", "toe"]} legs />
      <Guide from={hips} to={{ x: hips.x, y: under + 4 }} measured />
      <Guide from={ankle} to={{ x: ankle.x, y: under + 4 }} />
      <Dot at={hips} />
      <Span from={{ x: ankle.x, y: under }} to={{ x: hips.x, y: under }} />
      <Label x={160} y={under + 24}>
        {words.ahead}
      </Label>
    </Picture>
  );
}
