import styles from "./methods.module.css";

/** Lines of a formula, in plain type. */
export function Formula({ lines }: { readonly lines: readonly string[] }) {
  return (
    <ul className={styles.formula}>
      {lines.map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  );
}
