import { PrintError } from "./print-error";

/** What prints a sheet. It is fetched when somebody prints, so that it never weighs on drawing. */
export async function fetchPress(): Promise<typeof import("./press")> {
  try {
    return await import("./press");
  } catch (cause) {
    throw new PrintError("library", "the export library did not load", { cause });
  }
}
