import { common, methodPictures as words } from "../../_words";
import { Curve } from "../curve";
import { Dot } from "../dot";
import { Guide } from "../guide";
import { Label } from "../label";
import { Picture } from "../picture";
import { Span } from "../span";

const HEIGHTS = [
  { pose: "contact", x: 40, y: 112 },
  { pose: "down", x: 100, y: 142 },
  { pose: "passing", x: 160, y: 80 },
  { pose: "up", x: 220, y: 52 },
  { pose: "contact", x: 280, y: 112 },
] as const;

export function HipOrderPicture() {
  return (
    <Picture check="hip-order">
      <Guide from={{ x: 24, y: 112 }} to={{ x: 296, y: 112 }} />
      <Curve through={HEIGHTS} />
      {HEIGHTS.map(({ pose, x, y }) => (
        <g key={x}>
          <Dot at={{ x, y }} />
          <Label x={x} y={190} quiet>
            {common.pose[pose]}
          </Label>
        </g>
      ))}
      <Span from={{ x: 100, y: 112 }} to={{ x: 100, y: 136 }} />
      <Label x={100} y={166}>
        {words.rise}
      </Label>
    </Picture>
  );
}
