import type { Review } from "../../lib/gait";

/**
 * What there is to say before any remark is read:
 * - `empty`: no panels · `unmarked`: no marks yet
 * - `reading`: the sheet was not read yet · `unread`: what reads it could not be fetched
 * - `redraw`: nothing stands out, but some ink does not follow the figures that were read
 * - `remarks`: there is something · `sound`: every question was answered, and nothing stands out
 * - `open`: nothing stands out so far, and some questions wait for marks
 */
export type MarginMood =
  | "empty"
  | "unmarked"
  | "reading"
  | "unread"
  | "remarks"
  | "redraw"
  | "sound"
  | "open";

export function marginMood(
  sheet: "empty" | "unmarked" | "marked",
  read: Pick<Review, "remarks" | "cannotTell"> | "reading" | "unread",
  toRedraw: number,
): MarginMood {
  if (read === "unread") return read;
  if (sheet !== "marked") return sheet;
  if (read === "reading") return read;
  const { remarks, cannotTell } = read;
  if (remarks.some(({ level }) => level !== "tidy")) return "remarks";
  if (toRedraw > 0) return "redraw";
  return cannotTell.length > 0 ? "open" : "sound";
}
