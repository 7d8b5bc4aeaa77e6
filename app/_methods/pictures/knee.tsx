import { methodPictures as words } from "../../_words";
import { GroundLine } from "../ground-line";
import { Guide } from "../guide";
import { Label } from "../label";
import { Leg } from "../leg";
import { PICTURE, Picture } from "../picture";
import styles from "../pictures.module.css";

const HIP = { x: 160, y: 26 };
const KNEE = { x: 142, y: 90 };
const ANKLE = { x: 160, y: 152 };

export function KneePicture() {
  return (
    <Picture check="knee">
      <GroundLine y={PICTURE.ground + 4} />
      <Leg hip={HIP} knee={{ x: 178, y: 90 }} ankle={ANKLE} ghost />
      <Leg hip={HIP} knee={KNEE} ankle={ANKLE} />
      <Guide from={KNEE} to={{ x: 129, y: 136 }} measured />
      <path className={styles.measure} d="M131 128Q142 136 153 128" />
      <Label x={126} y={116} anchor="end">
        {words.wrongWay}
      </Label>
    </Picture>
  );
}
