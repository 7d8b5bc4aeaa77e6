import { methodPictures as words } from "../../_words";
import { Dot } from "../dot";
import { Figure } from "../figure";
import { GroundLine } from "../ground-line";
import { Label } from "../label";
import { PICTURE, Picture } from "../picture";
import { POSES } from "../poses";
import type { Spots } from "../spots";
import { spotsOf } from "../spots";

const HONEST = spotsOf(POSES.contact.side, { at: 150, ground: PICTURE.ground, scale: 0.17 });
/** The arms have changed sides. */
const SPOTS: Spots = (joint) => {
  const arm = /^(left|right)-(elbow|wrist)$/.exec(joint);
  if (arm === null) return HONEST(joint);
  const part = arm[2] === "elbow" ? "elbow" : "wrist";
  return HONEST(arm[1] === "left" ? `right-${part}` : `left-${part}`);
};

export function OppositionPicture() {
  const [hand, foot] = [SPOTS("right-wrist"), SPOTS("right-heel")];
  return (
    <Picture check="opposition">
      <GroundLine />
      <Figure spots={SPOTS} />
      <Dot at={hand} />
      <Dot at={foot} />
      <Label x={hand.x + 12} y={hand.y + 2} anchor="start">
        {words.sameSide}
      </Label>
    </Picture>
  );
}
