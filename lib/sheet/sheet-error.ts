import { CodedError } from "../coded-error";

export class SheetError extends CodedError<"panel-missing"> {
  override name = "SheetError";
}
