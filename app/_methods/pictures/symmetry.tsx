import { methodPictures as words } from "../../_words";
import { Label } from "../label";
import { Picture } from "../picture";
import { Print } from "../print";
import { Span } from "../span";

const LEFT_Y = 70;
const RIGHT_Y = 112;

export function SymmetryPicture() {
  return (
    <Picture check="symmetry">
      <Print side="right" at={{ x: 36, y: RIGHT_Y }} />
      <Print side="left" at={{ x: 158, y: LEFT_Y }} />
      <Print side="right" at={{ x: 248, y: RIGHT_Y }} />
      <Span from={{ x: 36, y: 150 }} to={{ x: 158, y: 150 }} />
      <Span from={{ x: 158, y: 150 }} to={{ x: 248, y: 150 }} />
      <Label x={97} y={172}>
        {words.leftStep}
      </Label>
      <Label x={203} y={172}>
        {words.rightStep}
      </Label>
    </Picture>
  );
}
