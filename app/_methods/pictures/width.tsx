import { methodPictures as words } from "../../_words";
import { Guide } from "../guide";
import { Label } from "../label";
import { Picture } from "../picture";
import { Print } from "../print";
import { Span } from "../span";

const LEFT_Y = 70;
const RIGHT_Y = 122;

export function WidthPicture() {
  return (
    <Picture check="width">
      <Guide from={{ x: 14, y: LEFT_Y }} to={{ x: 306, y: LEFT_Y }} />
      <Guide from={{ x: 14, y: RIGHT_Y }} to={{ x: 306, y: RIGHT_Y }} />
      <Print side="right" at={{ x: 34, y: RIGHT_Y }} />
      <Print side="left" at={{ x: 128, y: LEFT_Y }} />
      <Print side="right" at={{ x: 222, y: RIGHT_Y }} />
      <Span from={{ x: 206, y: LEFT_Y }} to={{ x: 206, y: RIGHT_Y }} />
      <Label x={216} y={92} anchor="start">
        {words.width}
      </Label>
    </Picture>
  );
}
