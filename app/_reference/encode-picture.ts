import { PICTURE_LIMITS } from "../../shared/limits";
import { readPictureHeader } from "../../shared/picture-header";
import { reference as words } from "../_words";
import { PictureError } from "./picture-error";

export interface EncodedPicture {
  readonly blob: Blob;
  /** Pixels, the right way up. */
  readonly width: number;
  readonly height: number;
}

/**
 * How large and how finely a picture is tried, until it has few enough bytes. Side in pixels; quality
 * as the encoders count it. Our own choice: a drawing over it needs no finer.
 */
const TRIES = [
  { side: PICTURE_LIMITS.side, quality: 0.85 },
  { side: PICTURE_LIMITS.side, quality: 0.7 },
  { side: 1448, quality: 0.7 },
  { side: 1024, quality: 0.6 },
] as const;

/**
 * A picture file drawn anew, the right way up and no larger than it need be. Whatever else the file
 * said (where and when it was taken, by which machine, an earlier version of itself) stays behind.
 *
 * Errors:  PictureError for a file that is no picture, or too large a one; AbortError when stopped
 */
export async function encodePicture(file: Blob, signal: AbortSignal): Promise<EncodedPicture> {
  const bitmap = await decode(file);
  try {
    for (const { side, quality } of TRIES) {
      signal.throwIfAborted();
      const { width, height } = withinSide(bitmap, side);
      const blob = await draw(bitmap, { width, height, quality });
      if (blob.size <= PICTURE_LIMITS.bytes) return { blob, width, height };
    }
  } finally {
    bitmap.close();
  }
  throw new PictureError(words.why.tooFine);
}

async function decode(file: Blob): Promise<ImageBitmap> {
  if (file.size > PICTURE_LIMITS.fileBytes) {
    throw new PictureError(words.why.tooLarge(file.size));
  }
  const bytes = await file.arrayBuffer();
  const header = readPictureHeader(new Uint8Array(bytes));
  if (header === null) throw new PictureError(words.why.kind);
  const pixels = header.width * header.height;
  if (pixels > PICTURE_LIMITS.filePixels) throw new PictureError(words.why.tooMany(pixels));
  try {
    const whole = new Blob([bytes], { type: header.type });
    return await createImageBitmap(whole, { imageOrientation: "from-image" });
  } catch (cause) {
    throw new PictureError(words.why.broken, { cause });
  }
}

function withinSide({ width, height }: ImageBitmap, side: number) {
  const scale = Math.min(1, side / Math.max(width, height));
  const least = (length: number) => Math.max(1, Math.round(length * scale));
  return { width: least(width), height: least(height) };
}

interface Drawing {
  readonly width: number;
  readonly height: number;
  readonly quality: number;
}

async function draw(bitmap: ImageBitmap, { width, height, quality }: Drawing): Promise<Blob> {
  const canvas = document.createElement("canvas");
  canvas.width = width;
  canvas.height = height;
  const context = canvas.getContext("2d");
  if (context === null) throw new PictureError(words.why.unknown);
  context.imageSmoothingQuality = "high";
  context.drawImage(bitmap, 0, 0, width, height);
  const webp = await encoded(canvas, "image/webp", quality);
  if (webp.type === "image/webp") return webp;
  // A browser that writes no WebP. JPEG knows nothing of transparency: white stands in for the paper.
  context.globalCompositeOperation = "destination-over";
  context.fillStyle = "#fff";
  context.fillRect(0, 0, width, height);
  return encoded(canvas, "image/jpeg", quality);
}

function encoded(canvas: HTMLCanvasElement, type: string, quality: number): Promise<Blob> {
  return new Promise((resolve, reject) => {
    const take = (blob: Blob | null) => {
      if (blob === null) reject(new PictureError(words.why.broken));
      else resolve(blob);
    };
    canvas.toBlob(take, type, quality);
  });
}
