import { CodedError } from "../coded-error";

/**
 * Bytes that are not a stroke we can read: cut short, longer than what they say they hold, written by
 * a version that knows more than this one, or holding values that no pen could have left.
 */
export class StrokeError extends CodedError<
  "truncated" | "trailing" | "newer-version" | "damaged"
> {
  override name = "StrokeError";
}
