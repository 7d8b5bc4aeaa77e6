"use client";
import { useEffect, useState } from "react";
import { type Review, type ToldTogether, toldAs, type Walk } from "../../lib/gait";
import { readerInUse, useRoom } from "../_room";
import { fixOf, walkFound } from "./fix-of";

/** Remarks are told together once nothing has changed for so long; until then as they were told before. */
const AT_REST_MS = 400;

/** A breath between two fixes that are tried, so that whatever the hand does comes first. */
const BREATH_MS = 16;

/** Which open remarks are of one cause, as last found; it follows the review once the sheet is at rest. */
export function useTogether(): readonly ToldTogether[] {
  const { review, sheet } = useRoom();
  const [together, tell] = useState<readonly ToldTogether[]>([]);
  useEffect(() => {
    let waiting: ReturnType<typeof setTimeout> | undefined;
    let last: Asked | null = null;
    const begin = () => {
      const now = sheet.getSnapshot();
      const read = review.get();
      if (read === null) return; // it is begun when the sheet was read
      const asked = { walk: walkFound(now), review: read };
      if (last !== null && isSame(last, asked)) return;
      const work = readerInUse().findingCauses(asked.walk, read, (remark) => fixOf(now, remark));
      const go = () => {
        if (review.held.get()) return again();
        const { done, value } = work.next();
        if (done === true) {
          last = asked;
          return tell(value);
        }
        waiting = setTimeout(go, BREATH_MS);
      };
      go();
    };
    const again = () => {
      clearTimeout(waiting);
      waiting = setTimeout(begin, AT_REST_MS);
    };
    again();
    const stop = review.subscribe(again);
    return () => {
      stop();
      clearTimeout(waiting);
    };
  }, [review, sheet]);
  return together;
}

interface Asked {
  readonly walk: Walk;
  readonly review: Review;
}

/** Whether nothing that was asked has changed: a stroke of ink is no reason to ask again. */
function isSame(before: Asked, now: Asked): boolean {
  const { panels: was, ...restWas } = before.walk;
  const { panels, ...rest } = now.walk;
  return (
    was.length === panels.length &&
    was.every((panel, at) => panel === panels[at]) &&
    JSON.stringify(restWas) === JSON.stringify(rest) &&
    heard(before.review) === heard(now.review)
  );
}

const heard = ({ yardstick, remarks }: Review): string =>
  [yardstick, ...remarks.map(toldAs)].join("\n");
