import { PrintError } from "./print-error";

/** A picture that is ready to be shown. Whoever loads it closes it, when it is no longer shown. */
export interface LoadedPicture {
  readonly picture: HTMLImageElement;
  close(): void;
}

/**
 * Reads an SVG file, which must hold everything it needs, as a picture.
 *
 * Errors:  PrintError "picture"; AbortError when it was stopped
 */
export async function loadPicture(svg: string, signal: AbortSignal): Promise<LoadedPicture> {
  const address = URL.createObjectURL(new Blob([svg], { type: "image/svg+xml" }));
  const close = () => URL.revokeObjectURL(address);
  const picture = new Image();
  picture.src = address;
  try {
    await picture.decode();
    signal.throwIfAborted();
    return { picture, close };
  } catch (cause) {
    close();
    signal.throwIfAborted();
    throw new PrintError("picture", "the browser did not decode the SVG", { cause });
  }
}
