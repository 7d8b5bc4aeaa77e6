import { CodedError } from "../coded-error";

export class SheetError extends CodedError<"panel-missing" | "newer-version"> {
  override name = "SheetError";
}
