import { loadPicture } from "./load-picture";
import { PrintError } from "./print-error";

/**
 * Draws an SVG file, which must hold everything it needs, into a PNG.
 *
 * Units:   pixels
 * Errors:  PrintError "picture" or "size"; AbortError when it was stopped
 */
export async function makePng(svg: string, width: number, signal: AbortSignal): Promise<Blob> {
  const { picture, close } = await loadPicture(svg, signal);
  try {
    return await rasterise(picture, width, signal);
  } finally {
    close();
  }
}

async function rasterise(
  picture: HTMLImageElement,
  width: number,
  signal: AbortSignal,
): Promise<Blob> {
  const height = Math.round((width * picture.naturalHeight) / picture.naturalWidth);
  const canvas = document.createElement("canvas");
  canvas.width = width;
  canvas.height = height;
  const surface = canvas.getContext("2d");
  if (surface === null) throw new PrintError("size", `no canvas of ${width} × ${height}`);
  surface.drawImage(picture, 0, 0, width, height);
  const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, "image/png"));
  signal.throwIfAborted();
  if (blob === null) throw new PrintError("size", `no picture of ${width} × ${height}`);
  return blob;
}
