import { common, methodPictures as words } from "../../_words";
import { Dot } from "../dot";
import { Figure } from "../figure";
import { GroundLine } from "../ground-line";
import { Guide } from "../guide";
import { Label } from "../label";
import { PICTURE, Picture } from "../picture";
import { POSES } from "../poses";
import { Span } from "../span";
import { moved, spotsOf } from "../spots";

const SIDE = spotsOf(POSES.passing.side, { at: 60, ground: PICTURE.ground, scale: 0.16 });
const FRONT = moved(
  spotsOf(POSES.passing.front, { at: 150, ground: PICTURE.ground, scale: 0.16 }),
  [
    "left-hip",
    "right-hip",
    "left-shoulder",
    "right-shoulder",
    "left-elbow",
    "right-elbow",
    "left-wrist",
    "right-wrist",
    "head",
  ],
  { x: 0, y: 14 },
);

export function ViewsPicture() {
  const hip = SIDE("right-hip");
  const across = FRONT("right-hip");
  const x = 198;
  return (
    <Picture check="views">
      <GroundLine />
      <Figure spots={SIDE} marks={["hip"]} />
      <Figure spots={FRONT} marks={["hip"]} />
      <Guide from={hip} to={{ x: x + 6, y: hip.y }} measured />
      <Guide from={across} to={{ x: x + 6, y: across.y }} />
      <Dot at={hip} />
      <Span from={{ x, y: hip.y }} to={{ x, y: across.y }} />
      <Label x={207} y={(hip.y + across.y) / 2 + 5} anchor="start">
        {words.heights}
      </Label>
      <Label x={60} y={188} quiet>
        {common.view.side}
      </Label>
      <Label x={150} y={188} quiet>
        {common.view.front}
      </Label>
    </Picture>
  );
}
