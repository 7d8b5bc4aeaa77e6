import { METHODS } from "../../lib/gait";
import { methods as words } from "../_words";
import { AboutReadings } from "./about-readings";
import { Contents } from "./contents";
import { MethodSection } from "./method-section";
import styles from "./methods.module.css";

/** How every reading is made, from the same numbers that the checks go by. Needs no script to be read. */
export function MethodsPage() {
  return (
    <div className={styles.desk} id="top">
      <header className={styles.head}>
        <a className={styles.home} href="/">
          {words.home}
        </a>
        <h1>{words.title}</h1>
        <p className={styles.lead}>{words.lead}</p>
      </header>
      <div className={styles.columns}>
        <Contents methods={METHODS} />
        <main className={styles.sheets}>
          <AboutReadings />
          <h2 className={styles.checks} id="checks">
            {words.checks}
          </h2>
          {METHODS.map((method) => (
            <MethodSection key={method.check} method={method} />
          ))}
        </main>
      </div>
    </div>
  );
}
