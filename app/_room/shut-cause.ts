import { CLOSE } from "../../shared/close-code";

/**
 * Why the door is closed for good. `misheard`: the hub could not read what this page sent;
 * `shut-out`: three things that came from this browser each broke a document;
 * `no-way-in`: while the line was away this browser lost its right to the sheet, or the sheet went.
 */
export type ShutCause =
  | "revoked"
  | "gone"
  | "elsewhere"
  | "newer-version"
  | "misheard"
  | "shut-out"
  | "no-way-in";

/** A final close code's meaning; `gone` for one that this page does not know. */
export function shutCauseOf(code: number | "no-way-in"): ShutCause {
  switch (code) {
    case CLOSE.revoked:
      return "revoked";
    case CLOSE.clientTaken:
      return "elsewhere";
    case CLOSE.newerVersion:
      return "newer-version";
    case CLOSE.badFrames:
      return "misheard";
    case CLOSE.shutOut:
      return "shut-out";
    case "no-way-in":
      return code;
    default:
      return "gone";
  }
}
