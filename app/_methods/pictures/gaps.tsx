import { common, methodPictures as words } from "../../_words";
import { Label } from "../label";
import { Picture } from "../picture";
import styles from "../pictures.module.css";
import { Span } from "../span";

const RULER = 128;
const xOf = (frame: number): number => 32 + (frame - 1) * 21.3;
const FRAMES = Array.from({ length: 13 }, (_, nth) => nth + 1);
const POSES = [
  { pose: "contact", frame: 1 },
  { pose: "down", frame: 4 },
  { pose: "passing", frame: 9 },
  { pose: "contact", frame: 13 },
] as const;

export function GapsPicture() {
  return (
    <Picture check="gaps">
      <path
        className={styles.ground}
        d={`M${xOf(1) - 12} ${RULER}H${xOf(13) + 12}${FRAMES.map((frame) => `M${xOf(frame)} ${RULER}v6`).join("")}`}
      />
      {POSES.map(({ pose, frame }) => (
        <g key={frame}>
          <path className={styles.stem} d={`M${xOf(frame)} 62V${RULER}`} />
          <Label x={xOf(frame)} y={52} quiet>
            {common.pose[pose]}
          </Label>
          <Label x={xOf(frame)} y={RULER + 22} quiet>
            {String(frame)}
          </Label>
        </g>
      ))}
      <path className={styles.ghostCurve} d={`M${xOf(7)} 76V${RULER}`} />
      <Span from={{ x: xOf(4), y: 98 }} to={{ x: xOf(9), y: 98 }} />
      <Label x={xOf(6.1)} y={90}>
        {words.frames}
      </Label>
      <Label x={xOf(7)} y={RULER + 44} quiet>
        {words.even}
      </Label>
    </Picture>
  );
}
