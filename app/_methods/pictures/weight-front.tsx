import { methodPictures as words } from "../../_words";
import { Dot } from "../dot";
import { Figure } from "../figure";
import { GroundLine } from "../ground-line";
import { Guide } from "../guide";
import { Label } from "../label";
import { PICTURE, Picture } from "../picture";
import { POSES } from "../poses";
import { Span } from "../span";
import { moved, spotsOf } from "../spots";

const GROUND = PICTURE.ground - 8;
/** The hips hang back over the foot that swings. */
const SPOTS = moved(
  moved(
    spotsOf(POSES.passing.front, { at: 150, ground: GROUND, scale: 0.31 }),
    ["left-hip", "right-hip"],
    { x: 26, y: 0 },
  ),
  ["left-knee", "right-knee"],
  { x: 12, y: 0 },
);

export function WeightFrontPicture() {
  const [left, right] = [SPOTS("left-hip"), SPOTS("right-hip")];
  const hips = { x: (left.x + right.x) / 2, y: (left.y + right.y) / 2 };
  const ankle = SPOTS("right-ankle");
  const under = GROUND + 10;
  return (
    <Picture check="weight-front">
      <GroundLine y={GROUND} />
      <Figure spots={SPOTS} marks={["hip", "ankle"]} legs />
      <Guide from={hips} to={{ x: hips.x, y: under + 4 }} measured />
      <Guide from={ankle} to={{ x: ankle.x, y: under + 4 }} />
      <Dot at={hips} />
      <Span from={{ x: ankle.x, y: under }} to={{ x: hips.x, y: under }} />
      <Label x={160} y={under + 24}>
        {words.beside}
      </Label>
    </Picture>
  );
}
