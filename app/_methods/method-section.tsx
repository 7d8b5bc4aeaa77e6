import type { ReactNode } from "react";
import { type CheckId, KINDS, type Method, quietedIn } from "../../lib/gait";
import { remarks, methods as words } from "../_words";
import { capital } from "./capital";
import { Formula } from "./formula";
import { LimitsTable } from "./limits-table";
import styles from "./methods.module.css";
import { PICTURES } from "./pictures";
import { unbroken } from "./unbroken";

export interface MethodSectionProps {
  readonly method: Method;
}

/** One check: its question, what it measures, by which limits, and what people do. */
export function MethodSection({ method }: MethodSectionProps) {
  const { check, asks, measures, formula, limits, life } = method;
  const { section } = words;
  const Drawn = PICTURES[check];
  const heading = `${check}-heading`;
  return (
    <section className={`${styles.card} ${styles.method}`} id={check} aria-labelledby={heading}>
      <header>
        <h3 id={heading}>{capital(remarks.check[check])}</h3>
        <p className={styles.asks}>{asks}</p>
      </header>
      <div className={styles.measures}>
        <div>
          <Titled heading={section.measures}>
            <p>{unbroken(measures)}</p>
          </Titled>
          <Titled heading={section.formula}>
            <Formula lines={formula} />
          </Titled>
        </div>
        <Drawn />
      </div>
      <Titled heading={section.limits}>
        <LimitsTable check={check} limits={limits} />
      </Titled>
      <div className={styles.asides}>
        {life !== null && (
          <Titled heading={section.life}>
            <p>{unbroken(life)}</p>
          </Titled>
        )}
        <Titled heading={section.kinds}>
          <QuietKinds check={check} />
        </Titled>
        <Titled heading={section.fix}>
          <p>{fixOf(check)}</p>
        </Titled>
      </div>
      <p className={styles.up}>
        <a href="#top">{section.top}</a>
      </p>
    </section>
  );
}

function fixOf(check: CheckId): string {
  return words.fix[check] ?? words.fixNone;
}

interface TitledProps {
  readonly heading: string;
  readonly children: ReactNode;
}

function Titled({ heading, children }: TitledProps) {
  return (
    <div className={styles.titled}>
      <h4>{heading}</h4>
      {children}
    </div>
  );
}

/** Which kinds of walk ask not to be judged by the check, or by a part of it, and why. */
function QuietKinds({ check }: { readonly check: CheckId }) {
  const quiet = KINDS.flatMap((kind) =>
    quietedIn(kind)
      .filter((quieted) => quieted.check === check)
      .map(({ topic, why }) => ({ kind, topic, why })),
  );
  if (quiet.length === 0) return <p>{words.section.kindsNone}</p>;
  return (
    <ul className={styles.kinds}>
      {quiet.map(({ kind, topic, why }) => (
        <li key={kind + topic}>{words.quieted(words.kind[kind], topic.includes(":"), why)}</li>
      ))}
    </ul>
  );
}
