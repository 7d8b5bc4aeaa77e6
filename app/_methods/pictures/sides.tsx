import { methodPictures as words } from "../../_words";
import { Arrow } from "../arrow";
import { Figure } from "../figure";
import { GroundLine } from "../ground-line";
import { JointDot } from "../joint-dot";
import { Label } from "../label";
import { PICTURE, Picture } from "../picture";
import { POSES } from "../poses";
import { spotsOf } from "../spots";

const BEFORE = spotsOf(POSES.contact.side, { at: 92, ground: PICTURE.ground, scale: 0.16 });
const AFTER = spotsOf(POSES.down.side, { at: 226, ground: PICTURE.ground, scale: 0.16 });
const JOINTS = ["knee", "ankle"] as const;

export function SidesPicture() {
  const middle = 160;
  return (
    <Picture check="sides">
      <GroundLine />
      <Figure spots={BEFORE} marks={JOINTS} />
      <Figure spots={AFTER} />
      {JOINTS.map((joint) => (
        <g key={joint}>
          <JointDot side="left" at={AFTER(`right-${joint}`)} size={4.2} />
          <JointDot side="right" at={AFTER(`left-${joint}`)} size={4.2} />
        </g>
      ))}
      <Arrow from={{ x: middle - 16, y: 60 }} to={{ x: middle + 16, y: 60 }} />
      <Label x={226} y={190}>
        {words.swapped}
      </Label>
    </Picture>
  );
}
