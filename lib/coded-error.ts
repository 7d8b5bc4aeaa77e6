/** The base of errors that somebody may handle: the screen branches on `code`, never on words. */
export class CodedError<Code extends string> extends Error {
  override name = "CodedError";
  readonly code: Code;

  constructor(code: Code, message: string, options?: ErrorOptions) {
    super(message, options);
    this.code = code;
  }
}
