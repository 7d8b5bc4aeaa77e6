import type { ReactNode } from "react";
import { YARDSTICKS } from "../../lib/gait";
import { remarks, methods as words } from "../_words";
import { Formula } from "./formula";
import { LevelMark } from "./level-mark";
import styles from "./methods.module.css";
import { unbroken } from "./unbroken";

const LEVELS = ["shows", "may-show", "tidy"] as const;

/** What stands before the checks: what readings are, how sure, by which yardsticks, and whence. */
export function AboutReadings() {
  const { what, sure, sizes, yardsticks, levels, from } = words.about;
  return (
    <div className={`${styles.card} ${styles.about}`}>
      <Part id="what" heading={what.heading} words={what.words} />
      <Part id="sure" heading={sure.heading} words={sure.words}>
        <Formula lines={sure.formula} />
      </Part>
      <Part id="sizes" heading={sizes.heading} words={sizes.words} />
      <Part id="yardsticks" heading={yardsticks.heading} words={[yardsticks.words]}>
        <dl className={styles.terms}>
          {YARDSTICKS.map((name) => (
            <div key={name}>
              <dt>{remarks.yardstick.name[name]}</dt>
              <dd>{remarks.yardstick.means[name]}</dd>
            </div>
          ))}
        </dl>
      </Part>
      <Part id="levels" heading={levels.heading} words={[]}>
        <dl className={styles.terms}>
          {LEVELS.map((level) => (
            <div key={level}>
              <dt>
                <LevelMark level={level} />
              </dt>
              <dd>{levels.list[level]}</dd>
            </div>
          ))}
        </dl>
      </Part>
      <Part id="from" heading={from.heading} words={from.words}>
        <p className={styles.credit}>{from.credit}</p>
      </Part>
    </div>
  );
}

interface PartProps {
  readonly id: string;
  readonly heading: string;
  readonly words: readonly string[];
  readonly children?: ReactNode;
}

function Part({ id, heading, words: paragraphs, children }: PartProps) {
  return (
    <section className={styles.part} id={`about-${id}`} aria-labelledby={`${id}-heading`}>
      <h2 id={`${id}-heading`}>{heading}</h2>
      {paragraphs.map((paragraph) => (
        <p key={paragraph}>{unbroken(paragraph)}</p>
      ))}
      {children}
    </section>
  );
}
