import type { JointName } from "../../../lib/body";
import { methodPictures as words } from "../../_words";
import { Arrow } from "../arrow";
import { Foot } from "../foot";
import { GroundLine } from "../ground-line";
import { Guide } from "../guide";
import { Label } from "../label";
import { Picture } from "../picture";
import { POSES } from "../poses";
import { moved, spotsOf } from "../spots";

const GROUND = 140;
const FIRST = spotsOf(POSES.passing.side, { at: 104, ground: GROUND, scale: 0.85 });
const FOOT: readonly JointName[] = [
  "right-knee",
  "right-ankle",
  "right-heel",
  "right-ball",
  "right-toe",
];
const SLIP = 62;
const LATER = moved(FIRST, FOOT, { x: SLIP, y: 0 });

export function SlidePicture() {
  const [from, to] = [FIRST("right-ball"), LATER("right-ball")];
  const under = GROUND + 16;
  return (
    <Picture check="slide">
      <GroundLine y={GROUND} />
      <Foot spots={FIRST} side="right" ghost />
      <Foot spots={LATER} side="right" marked />
      <Guide from={from} to={{ x: from.x, y: under + 5 }} />
      <Guide from={to} to={{ x: to.x, y: under + 5 }} />
      <Arrow from={{ x: from.x, y: under }} to={{ x: to.x, y: under }} />
      <Label x={(from.x + to.x) / 2} y={under + 24}>
        {words.slip}
      </Label>
    </Picture>
  );
}
