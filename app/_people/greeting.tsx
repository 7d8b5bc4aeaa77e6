"use client";
import { useState } from "react";
import { Button } from "../_controls";
import { people } from "../_words";
import { keepGreeted, wasGreeted } from "./greeted";
import styles from "./people-bar.module.css";
import form from "./people-form.module.css";

export interface GreetingProps {
  /** What the others see this person called. */
  readonly called: string;
  readonly onGive: () => void;
  readonly onLater: () => void;
}

/** Offers a newcomer, once, to give a name. It stands beside the work and asks for nothing. */
export function Greeting({ called, onGive, onLater }: GreetingProps) {
  const [greeted, setGreeted] = useState(wasGreeted);
  if (greeted) return null;
  const done = (then: () => void) => {
    keepGreeted();
    setGreeted(true);
    then();
  };
  return (
    <section className={styles.greeting} aria-label={people.greet.label}>
      <p>{people.greet.words(called)}</p>
      <div className={form.row}>
        <Button small onClick={() => done(onGive)}>
          {people.greet.give}
        </Button>
        <Button small look="quiet" onClick={() => done(onLater)}>
          {people.greet.later}
        </Button>
      </div>
    </section>
  );
}
