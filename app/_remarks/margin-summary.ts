import type { Remark } from "../../lib/gait";
import { remarks as words } from "../_words";
import { countsInWords } from "./count-remarks";
import type { MarginMood } from "./margin-mood";

/** The line beside the heading: counts where there are any, else what the matter is. */
export function marginSummary(found: readonly Remark[], mood: MarginMood): string {
  const counts = countsInWords(found);
  if (counts !== "") return counts;
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
