import type { Review } from "../../lib/gait";

/**
 * What there is to say before any remark is read:
 * - `empty`: no panels · `unmarked`: no marks yet
 * - `redraw`: nothing stands out, but some ink does not follow the figures that were read
 * - `remarks`: there is something · `sound`: every question was answered, and nothing stands out
 * - `open`: nothing stands out so far, and some questions wait for marks
 */
export type MarginMood = "empty" | "unmarked" | "remarks" | "redraw" | "sound" | "open";

export function marginMood(
  sheet: "empty" | "unmarked" | "marked",
  { remarks, cannotTell }: Pick<Review, "remarks" | "cannotTell">,
  toRedraw: number,
): MarginMood {
  if (sheet !== "marked") return sheet;
  if (remarks.some(({ level }) => level !== "tidy")) return "remarks";
  if (toRedraw > 0) return "redraw";
  return cannotTell.length > 0 ? "open" : "sound";
}
