import type { CheckId } from "../../lib/gait";
import { remarks } from "../_words";
import styles from "./method-link.module.css";

export interface MethodLinkProps {
  /** The check whose method is shown; without one the page's head. */
  readonly check?: CheckId;
}

/** The way to the page that says how it is measured, in a tab of its own: the board stays as it is. */
export function MethodLink({ check }: MethodLinkProps) {
  const words = check === undefined ? remarks.method.all : remarks.method.one;
  const about = check === undefined ? "" : `: ${remarks.check[check]}`;
  return (
    <p>
      <a
        className={styles.method}
        href={check === undefined ? "/methods" : `/methods#${check}`}
        target="_blank"
        rel="noopener"
        aria-label={`${words}${about}${remarks.method.newTab}`}
      >
        {words}
      </a>
    </p>
  );
}
