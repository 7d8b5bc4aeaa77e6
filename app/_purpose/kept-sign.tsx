import styles from "./purpose.module.css";

/** Kept on purpose, for the eye: a ring. Its words stand beside it. */
export function KeptSign() {
  return (
    <svg className={styles.sign} viewBox="0 0 20 18" aria-hidden="true" focusable="false">
      <circle cx="10" cy="9.5" r="6.2" />
    </svg>
  );
}
