import { Figure } from "./figure";
import { Label } from "./label";
import styles from "./pictures.module.css";
import { POSES, type ShownPose } from "./poses";
import { spotsOf } from "./spots";

export interface StripPanel {
  readonly pose: ShownPose;
  readonly label: string;
  /** It is not there, or not in its place. */
  readonly amiss?: "missing" | "misplaced";
}

export interface StripProps {
  readonly panels: readonly StripPanel[];
}

const CARD = { width: 64, height: 84, top: 24, step: 75, left: 15 } as const;
export const RULER_Y = 142;

/** The x of a panel's middle. */
export const panelX = (nth: number): number => CARD.left + CARD.step * nth + CARD.width / 2;

/** Four panels hung over a ruler. */
export function Strip({ panels }: StripProps) {
  return (
    <g>
      <line className={styles.ground} x1={12} x2={308} y1={RULER_Y} y2={RULER_Y} />
      {panels.map(({ pose, label, amiss }, nth) => {
        const at = panelX(nth);
        const low = CARD.top + CARD.height;
        return (
          <g key={label}>
            <rect
              className={amiss === undefined ? styles.card : styles.amiss}
              x={at - CARD.width / 2}
              y={CARD.top}
              width={CARD.width}
              height={CARD.height}
              rx={3}
            />
            <path className={styles.stem} d={`M${at} ${low}V${RULER_Y}`} />
            {amiss !== "missing" && (
              <Figure
                spots={spotsOf(POSES[pose].side, { at, ground: low - 8, scale: 0.083 })}
                head={4.6}
              />
            )}
            <Label x={at} y={RULER_Y + 18} quiet={amiss === undefined}>
              {label}
            </Label>
          </g>
        );
      })}
    </g>
  );
}
