import type { ReactNode } from "react";
import type { CheckId } from "../../lib/gait";
import { methodPictures } from "../_words";
import styles from "./pictures.module.css";

/** Units of a picture: 320 × 200, the ground usually at 168. */
export const PICTURE = { width: 320, height: 200, ground: 168 } as const;

export interface PictureProps {
  readonly check: CheckId;
  readonly children: ReactNode;
}

/** A piece of paper with what one check measures; told in words to whoever does not see it. */
export function Picture({ check, children }: PictureProps) {
  return (
    <svg
      className={styles.picture}
      viewBox={`0 0 ${PICTURE.width} ${PICTURE.height}`}
      role="img"
      aria-label={methodPictures.told[check]}
    >
      {children}
    </svg>
  );
}
