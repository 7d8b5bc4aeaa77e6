import { methodPictures as words } from "../../_words";
import { Arrow } from "../arrow";
import { Figure } from "../figure";
import { GroundLine } from "../ground-line";
import { Label } from "../label";
import { Picture } from "../picture";
import { POSES } from "../poses";
import { Span } from "../span";
import { spotsOf } from "../spots";

const GROUND = 122;
const SPOTS = spotsOf(POSES.contact.side, { at: 90, ground: GROUND, scale: 0.135 });

export function TempoPicture() {
  const [front, rear] = [SPOTS("right-heel"), SPOTS("left-ball")];
  const start = rear.x - 16;
  return (
    <Picture check="tempo">
      <GroundLine y={GROUND} />
      <Figure spots={SPOTS} head={7.4} />
      <Span from={{ x: start, y: GROUND + 14 }} to={{ x: front.x, y: GROUND + 14 }} />
      <Label x={front.x + 12} y={GROUND + 19} anchor="start">
        {words.step}
      </Label>
      <Arrow from={{ x: front.x, y: GROUND + 42 }} to={{ x: start + 18, y: GROUND + 42 }} />
      <Label x={front.x + 12} y={GROUND + 47} anchor="start">
        {words.advance}
      </Label>
    </Picture>
  );
}
