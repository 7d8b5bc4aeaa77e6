import type { Review } from "../../lib/gait";
import { remarks as words } from "../_words";
import { countsInWords } from "./count-remarks";
import type { MarginMood } from "./margin-mood";

/** What the summary counts: open remarks, what is kept on purpose, and drawings to redraw. */
export interface Counted extends Pick<Review, "remarks" | "kept"> {
  readonly toRedraw: number;
}

/** The line beside the heading: counts where there are any, else what the matter is. */
export function marginSummary({ remarks, kept, toRedraw }: Counted, mood: MarginMood): string {
  if (mood === "reading" || mood === "unread") return words.calm[mood];
  const counts = [
    countsInWords(remarks),
    toRedraw > 0 ? words.toRedraw(toRedraw) : "",
    kept.length > 0 ? words.kept(kept.length) : "",
  ].filter((part) => part !== "");
  if (remarks.length > 0 || toRedraw > 0) return counts.join(words.between);
  return [calmWord(mood), ...counts].join(words.between);
}

function calmWord(mood: MarginMood): string {
  switch (mood) {
    case "empty":
      return words.calm.strip;
    case "unmarked":
      return words.calm.marks;
    case "open":
      return words.calm.open;
    default:
      return words.calm.sound;
  }
}
