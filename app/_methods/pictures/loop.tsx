import { methodPictures as words } from "../../_words";
import { Dot } from "../dot";
import { Figure } from "../figure";
import { GroundLine } from "../ground-line";
import { Label } from "../label";
import { PICTURE, Picture } from "../picture";
import { POSES } from "../poses";
import { Span } from "../span";
import { moved, spotsOf } from "../spots";

const FIRST = spotsOf(POSES.contact.side, { at: 150, ground: PICTURE.ground, scale: 0.17 });
const LAST = moved(moved(FIRST, ["left-elbow"], { x: 6, y: -8 }), ["left-wrist"], {
  x: 26,
  y: -28,
});

export function LoopPicture() {
  const [from, to] = [FIRST("left-wrist"), LAST("left-wrist")];
  return (
    <Picture check="loop">
      <GroundLine />
      <Figure spots={FIRST} ghost />
      <Figure spots={LAST} />
      <Span from={from} to={to} />
      <Dot at={from} />
      <Dot at={to} />
      <Label x={to.x + 10} y={to.y + 4} anchor="start">
        {words.worst}
      </Label>
    </Picture>
  );
}
