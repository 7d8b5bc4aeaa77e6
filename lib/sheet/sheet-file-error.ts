import { CodedError } from "../coded-error";

/** A file that is no sheet we can read. The message is one line and names the place. */
export class SheetFileError extends CodedError<
  "too-large" | "not-json" | "foreign" | "newer-version" | "damaged"
> {
  override name = "SheetFileError";
}
