import { PencilSign } from "./pencil-sign";
import styles from "./people-bar.module.css";

export interface ChipProps {
  readonly name: string;
  readonly hue: number;
}

/** A person in the head band: their pencil and their name. */
export function Chip({ name, hue }: ChipProps) {
  return (
    <span className={styles.chip}>
      <PencilSign hue={hue} className={styles.chipPencil} />
      <span className={styles.chipName}>{name}</span>
    </span>
  );
}
