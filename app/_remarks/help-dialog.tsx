"use client";
import type { ReactNode } from "react";
import { SHEET_YARDSTICKS } from "../../lib/gait";
import { Dialog } from "../_controls";
import { common, help, remarks as words } from "../_words";
import styles from "./help.module.css";
import { LevelSign } from "./level-sign";
import { MethodLink } from "./method-link";

/** A key and what it does, as the board binds it. */
export interface KeyHelp {
  readonly keys: string;
  readonly does: string;
}

/** A sign that another part of the board draws, and what it means. */
export interface SignHelp {
  readonly sign: ReactNode;
  readonly means: string;
}

export interface HelpDialogProps {
  readonly keys: readonly KeyHelp[];
  readonly signs: readonly SignHelp[];
  readonly onClose: () => void;
}

/** The board's words, signs, yardsticks and keys, and what the readings are not. */
export function HelpDialog({ keys, signs, onClose }: HelpDialogProps) {
  return (
    <Dialog title={help.title} closeLabel={common.close} onClose={onClose} wide>
      <div className={styles.help}>
        <section>
          <h3>{help.words.heading}</h3>
          <Terms list={help.words.list} />
        </section>
        <section>
          <h3>{help.signs.heading}</h3>
          <ul className={styles.signs}>
            {(["shows", "may-show", "tidy"] as const).map((level) => (
              <li key={level}>
                <LevelSign level={level} />
                <span>{help.signs[level]}</span>
              </li>
            ))}
            {signs.map(({ sign, means }) => (
              <li key={means}>
                {sign}
                <span>{means}</span>
              </li>
            ))}
          </ul>
          <h3>{help.yardsticks.heading}</h3>
          <Terms
            list={SHEET_YARDSTICKS.map((name) => [
              words.yardstick.name[name],
              words.yardstick.means[name],
            ])}
          />
          <h3>{help.note.heading}</h3>
          <p>{help.note.words}</p>
          <MethodLink />
        </section>
        <section>
          <h3>{help.keysHeading}</h3>
          <KeyTable keys={keys} />
        </section>
      </div>
    </Dialog>
  );
}

function Terms({ list }: { readonly list: readonly (readonly [string, string])[] }) {
  return (
    <dl className={styles.terms}>
      {list.map(([word, meaning]) => (
        <div key={word}>
          <dt>{word}</dt>
          <dd>{meaning}</dd>
        </div>
      ))}
    </dl>
  );
}

const BETWEEN = " · "; // the keys of one line, as the overview writes them

function KeyTable({ keys }: { readonly keys: readonly KeyHelp[] }) {
  return (
    <table className={styles.keys}>
      <thead className="heard">
        <tr>
          <th scope="col">{help.key}</th>
          <th scope="col">{help.does}</th>
        </tr>
      </thead>
      <tbody>
        {keys.map(({ keys: combination, does }) => (
          <tr key={combination}>
            <th scope="row">
              {combination.split(BETWEEN).map((key) => (
                <kbd key={key}>{key}</kbd>
              ))}
            </th>
            <td>{does}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
