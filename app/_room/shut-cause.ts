import { CLOSE } from "../../shared/close-code";

/** Why the hub closed the door for good. `misheard`: it could not read what this page sent. */
export type ShutCause = "revoked" | "gone" | "elsewhere" | "newer-version" | "misheard";

/** A final close code's meaning; `gone` for one that this page does not know. */
export function shutCauseOf(code: number): ShutCause {
  switch (code) {
    case CLOSE.revoked:
      return "revoked";
    case CLOSE.clientTaken:
      return "elsewhere";
    case CLOSE.newerVersion:
      return "newer-version";
    case CLOSE.badFrames:
      return "misheard";
    default:
      return "gone";
  }
}
