import { type Tally, type Told, tallyOf } from "../_room";
import { handover } from "../_words";

const KINDS = ["strokes", "marks", "entries", "others"] as const satisfies (keyof Tally)[];

/** What was done again; empty where nothing was. */
export function keptWords({ doneAgain }: Told): string {
  const what = countedWords(doneAgain);
  return what === "" ? "" : handover.told.doneAgain(what);
}

/** One sentence for each reason that something was lost to the sheet. */
export function lostWords(lost: Told["lost"]): readonly string[] {
  const whys: Readonly<Record<string, string>> = handover.told.why;
  const reasons = [...new Set(lost.map(({ lost: why }) => why ?? ""))];
  return reasons.map((reason) => {
    const what = countedWords(tallyOf(lost.filter(({ lost: why }) => (why ?? "") === reason)));
    return handover.told.lost(what, whys[reason] ?? handover.told.otherwise);
  });
}

/** How much there is of what, in one line; empty where there is nothing. */
export function countedWords(tally: Tally): string {
  const some = KINDS.filter((kind) => tally[kind] > 0);
  return some.map((kind) => handover.told[kind](tally[kind])).join(", ");
}
