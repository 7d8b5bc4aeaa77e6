import { methodPictures as words } from "../../_words";
import { Foot } from "../foot";
import { GroundLine } from "../ground-line";
import { Guide } from "../guide";
import { Label } from "../label";
import { Picture } from "../picture";
import { POSES } from "../poses";
import { Span } from "../span";
import { moved, type Spots, spotsOf } from "../spots";

const GROUND = 146;
const SCALE = 0.44;
/** A pose's right foot with its heel, or its toe, set down at a place. */
function footAt(pose: "contact" | "passing", x: number): Spots {
  const spots = spotsOf(POSES[pose].side, { at: 0, ground: GROUND, scale: SCALE });
  const { x: heel } = spots("right-heel");
  return moved(spots, ["right-knee", "right-ankle", "right-heel", "right-ball", "right-toe"], {
    x: x - heel,
    y: 0,
  });
}
/** The left foot of the contact is the one that peels off. */
const PEELING = (() => {
  const spots = spotsOf(POSES.contact.side, { at: 0, ground: GROUND, scale: SCALE });
  const { x: heel } = spots("left-heel");
  return moved(spots, ["left-knee", "left-ankle", "left-heel", "left-ball", "left-toe"], {
    x: 246 - heel,
    y: 0,
  });
})();
const LANDING = footAt("contact", 34);
const FLAT = footAt("passing", 146);

export function FootRollPicture() {
  const toe = LANDING("right-toe");
  const heel = PEELING("left-heel");
  return (
    <Picture check="foot-roll">
      <GroundLine y={GROUND} />
      <Foot spots={LANDING} side="right" marked />
      <Foot spots={FLAT} side="right" marked />
      <Foot spots={PEELING} side="left" marked />
      <Span from={{ x: toe.x + 10, y: toe.y }} to={{ x: toe.x + 10, y: GROUND }} />
      <Guide from={toe} to={{ x: toe.x + 14, y: toe.y }} />
      <Span from={{ x: heel.x - 10, y: heel.y }} to={{ x: heel.x - 10, y: GROUND }} />
      <Guide from={heel} to={{ x: heel.x - 14, y: heel.y }} />
      <Label x={62} y={GROUND + 24}>
        {words.toeUp}
      </Label>
      <Label x={166} y={GROUND + 24} quiet>
        {words.flat}
      </Label>
      <Label x={262} y={GROUND + 24}>
        {words.heelUp}
      </Label>
    </Picture>
  );
}
