"use client";
import { type Place, placesOf } from "../../lib/gait";
import { type Panel, type Sheet, walkOf } from "../../lib/sheet";
import { useSheet } from "../_room";
import { strip } from "../_words";
import styles from "./stage.module.css";

/** Before the number: roughly, exactly, and on from the panel before. */
const SIGNS: Readonly<Record<Place["kind"], string>> = { solved: "≈", set: "=", travel: "→" };

export interface PlaceSignProps {
  readonly panel: Panel;
  /** There is room for the number, too. */
  readonly roomy: boolean;
}

/** Where a panel stands on the ground, and how that is known, on a sheet whose places are solved. */
export function PlaceSign({ panel, roomy }: PlaceSignProps) {
  const told = useSheet((sheet) => placeTold(sheet, panel));
  if (told === null) return null;
  const { kind, legs } = told;
  return (
    <span className={styles.place} title={strip.placeTold[kind](legs)}>
      <span aria-hidden="true">{roomy ? `${SIGNS[kind]} ${legs}` : SIGNS[kind]}</span>
      <span className="heard">{strip.placeTold[kind](legs)}</span>
    </span>
  );
}

interface PlaceTold {
  readonly kind: Place["kind"];
  readonly legs: string;
}

/** The same object for as long as it says the same, so that a column is not painted anew for nothing. */
const lastTold = new WeakMap<Panel, PlaceTold>();

function placeTold(sheet: Sheet, panel: Panel): PlaceTold | null {
  if (sheet.head.ground !== "solved") return null;
  const { kind, x } = placesOf(walkOf(sheet))(panel);
  const legs = x.toFixed(2);
  const last = lastTold.get(panel);
  if (last?.kind === kind && last.legs === legs) return last;
  const told = { kind, legs };
  lastTold.set(panel, told);
  return told;
}
