"use client";
import { useId } from "react";
import type { Orientation, PageChoice, PaperName } from "../../lib/export";
import { handover } from "../_words";
import styles from "./handover.module.css";

/** The page as it is being chosen: an orientation is remembered while there is no paper. */
export interface PageWish {
  readonly paper: PaperName | null;
  readonly orientation: Orientation;
}

const CHOICES: Readonly<Record<PaperName, Readonly<Record<Orientation, PageChoice>>>> = {
  a4: both("a4"),
  a3: both("a3"),
  letter: both("letter"),
  tabloid: both("tabloid"),
};

function both(paper: PaperName): Readonly<Record<Orientation, PageChoice>> {
  return {
    landscape: { paper, orientation: "landscape" },
    portrait: { paper, orientation: "portrait" },
  };
}

/** No paper: one picture. Made here, so that choosing a page does not load what prints it. */
const ONE_PICTURE: PageChoice = { paper: null };

/** The choice that a wish comes to; the same object for the same wish. */
export function choiceFor({ paper, orientation }: PageWish): PageChoice {
  return paper === null ? ONE_PICTURE : CHOICES[paper][orientation];
}

const PAPERS = Object.keys(CHOICES) as readonly PaperName[];
const ORIENTATIONS: readonly Orientation[] = ["landscape", "portrait"];

export interface PagePickerProps {
  readonly wish: PageWish;
  readonly onPick: (wish: PageWish) => void;
}

/** On which paper, and which way round. */
export function PagePicker({ wish, onPick }: PagePickerProps) {
  const id = useId();
  const { paper, orientation } = wish;
  return (
    <div className={styles.page}>
      <label htmlFor={`${id}paper`}>{handover.page}</label>
      <select
        id={`${id}paper`}
        value={paper ?? ""}
        onChange={({ target }) => {
          const picked = PAPERS.find((name) => name === target.value) ?? null;
          onPick({ ...wish, paper: picked });
        }}
      >
        {PAPERS.map((name) => (
          <option key={name} value={name}>
            {handover.papers[name]}
          </option>
        ))}
        <option value="">{handover.onePage}</option>
      </select>
      <fieldset className={styles.ways} disabled={paper === null}>
        <legend className="heard">{handover.orientation}</legend>
        {ORIENTATIONS.map((way) => (
          <label key={way}>
            <input
              type="radio"
              name={`${id}way`}
              value={way}
              checked={paper !== null && way === orientation}
              onChange={() => onPick({ ...wish, orientation: way })}
            />
            {handover.orientations[way]}
          </label>
        ))}
      </fieldset>
    </div>
  );
}
