import styles from "./fixes.module.css";

/** To redraw, for the eye: a pencil on a dashed line. Its words stand beside it. */
export function RedrawSign() {
  return (
    <svg className={styles.sign} viewBox="0 0 20 18" aria-hidden="true" focusable="false">
      <path d="M5.5 12.5 14 3l3.2 2.8-8.6 9.4-4 1z" />
      <path d="M1 17h2.6M6 17h2.6M11 17h2.6M16 17h2.6" />
    </svg>
  );
}
