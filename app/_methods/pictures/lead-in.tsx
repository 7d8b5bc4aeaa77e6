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
const STAND = spotsOf(POSES.stand.front, { at: 92, ground: GROUND, scale: 0.3 });
const OFF = moved(
  spotsOf(POSES["lead-in"].front, { at: 220, ground: GROUND, scale: 0.3 }),
  ["left-hip", "right-hip"],
  { x: -16, y: 0 },
);

export function LeadInPicture() {
  const [left, right] = [OFF("left-hip"), OFF("right-hip")];
  const hips = { x: (left.x + right.x) / 2, y: (left.y + right.y) / 2 };
  const ankle = OFF("left-ankle");
  const under = GROUND + 10;
  return (
    <Picture check="lead-in">
      <GroundLine y={GROUND} />
      <Figure spots={STAND} ghost legs marks={["ankle"]} />
      <Figure spots={OFF} legs marks={["ankle"]} />
      <Guide from={hips} to={{ x: hips.x, y: under + 4 }} measured />
      <Guide from={ankle} to={{ x: ankle.x, y: under + 4 }} />
      <Dot at={hips} />
      <Span from={{ x: hips.x, y: under }} to={{ x: ankle.x, y: under }} />
      <Label x={224} y={under + 24}>
        {words.shift}
      </Label>
    </Picture>
  );
}
