import { type Tally, type Told, tallyOf } from "../_room";
import { told as words } from "../_words";

const KINDS = ["strokes", "marks", "entries", "others"] as const satisfies (keyof Tally)[];

/** What was done again; empty where nothing was. */
export function keptWords({ doneAgain }: Told): string {
  const what = countedWords(doneAgain);
  return what === "" ? "" : words.doneAgain(what);
}

/** For each reason that something was lost to the sheet: what it is, and the reason. */
export function lostWords(
  lost: Told["lost"],
): readonly { readonly what: string; readonly why: string }[] {
  const whys: Readonly<Record<string, string>> = words.why;
  const reasons = [...new Set(lost.map(({ lost: why }) => why ?? ""))];
  return reasons.map((reason) => {
    const of = lost.filter(({ lost: why }) => (why ?? "") === reason);
    return {
      what: words.lost(countedWords(tallyOf(of))),
      why: whys[reason] ?? words.otherwise,
    };
  });
}

/** How much there is of what, in one line; empty where there is nothing. */
export function countedWords(tally: Tally): string {
  const some = KINDS.filter((kind) => tally[kind] > 0);
  return some.map((kind) => words[kind](tally[kind])).join(", ");
}
