"use client";
import { useId } from "react";
import { SHEET_YARDSTICKS } from "../../lib/gait";
import { amendHead } from "../../lib/sheet";
import { useMayDraw, useRoom, useSheet } from "../_room";
import { remarks as words } from "../_words";
import styles from "./yardstick.module.css";

/** What readings are held against. It belongs to the sheet, so everyone reads by the same one. */
export function YardstickPicker() {
  const room = useRoom();
  const mayDraw = useMayDraw();
  const yardstick = useSheet((sheet) => sheet.head.yardstick);
  const name = useId();
  return (
    <fieldset className={styles.yardstick} disabled={!mayDraw}>
      <legend>{words.yardstick.label}</legend>
      <div className={styles.choice}>
        {SHEET_YARDSTICKS.map((offered) => (
          <label key={offered}>
            <input
              type="radio"
              name={name}
              value={offered}
              checked={offered === yardstick}
              onChange={() => amendHead(room.drawing, { yardstick: offered })}
            />
            <span>{words.yardstick.name[offered]}</span>
          </label>
        ))}
      </div>
      <p>{words.yardstick.means[yardstick]}</p>
    </fieldset>
  );
}
