import type { JointName } from "../../../lib/body";
import { methodPictures as words } from "../../_words";
import { Foot } from "../foot";
import { GroundLine } from "../ground-line";
import { Guide } from "../guide";
import { Label } from "../label";
import { Picture } from "../picture";
import { POSES } from "../poses";
import { Span } from "../span";
import { moved, spotsOf } from "../spots";

const GROUND = 132;
const FRONT: readonly JointName[] = ["right-ball", "right-toe"];
const SPOTS = moved(spotsOf(POSES.passing.side, { at: 96, ground: GROUND, scale: 0.8 }), FRONT, {
  x: -4,
  y: 30,
});

export function SinkPicture() {
  const toe = SPOTS("right-toe");
  const x = toe.x + 16;
  return (
    <Picture check="sink">
      <GroundLine y={GROUND} />
      <Foot spots={SPOTS} side="right" marked />
      <Guide from={toe} to={{ x: x + 6, y: toe.y }} />
      <Span from={{ x, y: GROUND }} to={{ x, y: toe.y }} />
      <Label x={x + 10} y={toe.y + 4} anchor="start">
        {words.depth}
      </Label>
    </Picture>
  );
}
