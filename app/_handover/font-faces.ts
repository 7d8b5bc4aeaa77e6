import type { FontFace } from "../../lib/export";
import { PrintError } from "./print-error";

/**
 * The shipped family as it lies on the server. The bundler turns each address into one of its own.
 * They are the files that the page itself is set in.
 */
const ADDRESSES: readonly { readonly weight: FontFace["weight"]; readonly address: URL }[] = [
  {
    weight: 400,
    address: new URL(
      "../../node_modules/@expo-google-fonts/atkinson-hyperlegible-next/400Regular/AtkinsonHyperlegibleNext_400Regular.ttf",
      import.meta.url,
    ),
  },
  {
    weight: 600,
    address: new URL(
      "../../node_modules/@expo-google-fonts/atkinson-hyperlegible-next/600SemiBold/AtkinsonHyperlegibleNext_600SemiBold.ttf",
      import.meta.url,
    ),
  },
  {
    weight: 700,
    address: new URL(
      "../../node_modules/@expo-google-fonts/atkinson-hyperlegible-next/700Bold/AtkinsonHyperlegibleNext_700Bold.ttf",
      import.meta.url,
    ),
  },
];

/**
 * Fetches the family, to be put into a picture that may fetch nothing itself.
 *
 * Errors:  PrintError "font"; AbortError when it was stopped
 */
export async function fetchFontFaces(signal: AbortSignal): Promise<readonly FontFace[]> {
  return Promise.all(
    ADDRESSES.map(async ({ weight, address }) => ({
      weight,
      base64: await base64Of(address, signal),
    })),
  );
}

async function base64Of(address: URL, signal: AbortSignal): Promise<string> {
  try {
    const response = await fetch(address, { signal });
    if (!response.ok) throw new PrintError("font", `the font answered ${response.status}`);
    return toBase64(new Uint8Array(await response.arrayBuffer()));
  } catch (cause) {
    signal.throwIfAborted();
    throw new PrintError("font", "the font did not arrive", { cause });
  }
}

const CHUNK = 0x8000; // bytes a call: more arguments than this overflow the stack

function toBase64(bytes: Uint8Array): string {
  const letters: string[] = [];
  for (let at = 0; at < bytes.length; at += CHUNK) {
    letters.push(String.fromCharCode(...bytes.subarray(at, at + CHUNK)));
  }
  return btoa(letters.join(""));
}
