import { methodPictures as words } from "../../_words";
import { Guide } from "../guide";
import { Label } from "../label";
import { Leg } from "../leg";
import { Picture } from "../picture";
import { Span } from "../span";

const STAND = { hip: { x: 90, y: 26 }, knee: { x: 92, y: 92 }, ankle: { x: 90, y: 156 } };
const POSE = { hip: { x: 196, y: 26 }, knee: { x: 206, y: 92 }, ankle: { x: 190, y: 130 } };

export function LimbLengthPicture() {
  return (
    <Picture check="limb-length">
      <Leg {...STAND} />
      <Leg {...POSE} />
      <Guide from={{ x: 60, y: 92 }} to={{ x: 240, y: 92 }} />
      <Span from={{ x: 66, y: 92 }} to={{ x: 66, y: 156 }} />
      <Span from={{ x: 232, y: 92 }} to={{ x: 216, y: 131 }} />
      <Label x={242} y={116} anchor="start">
        {words.shank}
      </Label>
      <Label x={56} y={128} anchor="end">
        {words.shank}
      </Label>
      <Label x={90} y={188} quiet>
        {words.theStand}
      </Label>
      <Label x={198} y={188} quiet>
        {words.thePose}
      </Label>
    </Picture>
  );
}
