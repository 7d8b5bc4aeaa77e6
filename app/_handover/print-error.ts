import { handover } from "../_words";

export type PrintErrorCode = Exclude<keyof typeof handover.why, "unknown">;

/** Why no file was made; worded for a person by `whyNoFile`. */
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

export function whyNoFile(reason: unknown): string {
  return handover.failed(handover.why[reason instanceof PrintError ? reason.code : "unknown"]);
}

/** Whether somebody stopped it themselves. */
export function wasStopped(reason: unknown): boolean {
  return reason instanceof DOMException && reason.name === "AbortError";
}
