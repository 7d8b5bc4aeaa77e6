import { handover } from "../_words";

export type PrintErrorCode = Exclude<keyof typeof handover.why, "unknown">;

/** Why there is no print; worded for a person by `whyNoFile` and `whyNoPreview`. */
export class PrintError extends Error {
  override name = "PrintError";
  constructor(
    readonly code: PrintErrorCode,
    message: string,
    options?: ErrorOptions,
  ) {
    super(message, options);
  }
}

/** Why no file was made, for a person. */
export function whyNoFile(reason: unknown): string {
  return handover.failed(whyOf(reason));
}

/** Why there is no preview, for a person. */
export function whyNoPreview(reason: unknown): string {
  return handover.noPreview(whyOf(reason));
}

function whyOf(reason: unknown): string {
  return handover.why[reason instanceof PrintError ? reason.code : "unknown"];
}

/** Whether somebody stopped it themselves. */
export function wasStopped(reason: unknown): boolean {
  return reason instanceof DOMException && reason.name === "AbortError";
}
