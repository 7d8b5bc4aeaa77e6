import { told } from "../_words";

const MOST_LETTERS = 80; // some archives still cut names at 100

/** Windows keeps these names for itself, whatever follows the dot. */
const TAKEN = /^(con|prn|aux|nul|com\d|lpt\d)$/i;

/**
 * A file name after the sheet's title, that every system takes: no path, no control letters, no
 * leading or trailing dot.
 *
 * @example
 * fileName("Brindle carries: the parcels?", ".png"); // => "Brindle carries the parcels.png"
 */
export function fileName(title: string, extension: string): string {
  const plain = title
    .normalize("NFC")
    .replace(/[\p{Cc}\p{Cf}/\\:*?"<>|]+/gu, " ")
    .replace(/\s+/g, " ")
    .replace(/^[\s.]+|[\s.]+$/g, "");
  const short = [...plain]
    .slice(0, MOST_LETTERS)
    .join("")
    .replace(/[\s.]+$/, "");
  const safe = short === "" ? told.untitled : TAKEN.test(short) ? `${short} walk` : short;
  return `${safe}${extension}`;
}
