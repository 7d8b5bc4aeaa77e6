import type { Review } from "../../lib/gait";

/**
 * What there is to say before any remark is read:
 * - `empty`: no panels · `unmarked`: no marks yet
 * - `remarks`: there is something · `sound`: every question was answered, and nothing stands out
 * - `open`: nothing stands out so far, and some questions wait for marks
 */
export type MarginMood = "empty" | "unmarked" | "remarks" | "sound" | "open";

export function marginMood(
  sheet: "empty" | "unmarked" | "marked",
  { remarks, cannotTell }: Pick<Review, "remarks" | "cannotTell">,
): MarginMood {
  if (sheet !== "marked") return sheet;
  if (remarks.some(({ level }) => level !== "tidy")) return "remarks";
  return cannotTell.length > 0 ? "open" : "sound";
}
