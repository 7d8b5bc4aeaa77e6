import { methodPictures as words } from "../../_words";
import { Guide } from "../guide";
import { Label } from "../label";
import { Leg } from "../leg";
import { Picture } from "../picture";
import { Span } from "../span";

const STAND = { hip: { x: 64, y: 30 }, knee: { x: 66, y: 92 }, ankle: { x: 64, y: 152 } };
const LONG = { hip: { x: 136, y: 30 }, knee: { x: 161, y: 98 }, ankle: { x: 182, y: 166 } };

export function ReachPicture() {
  return (
    <Picture check="reach">
      <Leg {...STAND} ghost />
      <Leg {...LONG} />
      <Guide from={{ x: 40, y: 152 }} to={{ x: 250, y: 152 }} />
      <Span from={{ x: 154, y: 23 }} to={{ x: 200, y: 159 }} />
      <Label x={192} y={84} anchor="start">
        {words.hipToAnkle}
      </Label>
      <Label x={64} y={186} quiet>
        {words.theStand}
      </Label>
    </Picture>
  );
}
