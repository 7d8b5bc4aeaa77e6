import { reference as words } from "../_words";

/** Why a picture cannot lie under a paper, told for a person. `again`: the same file may do later. */
export class PictureError extends Error {
  override name = "PictureError";
  readonly again: boolean;

  constructor(message: string, options: ErrorOptions & { readonly again?: boolean } = {}) {
    super(message, options);
    this.again = options.again ?? false;
  }
}

export function whyNotPut(reason: unknown): { readonly why: string; readonly again: boolean } {
  if (reason instanceof PictureError) return { why: reason.message, again: reason.again };
  return { why: words.why.unknown, again: true };
}
