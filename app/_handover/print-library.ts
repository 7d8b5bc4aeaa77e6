import { PrintError } from "./print-error";

/** What prints a sheet. It is fetched when somebody prints, so that it never weighs on drawing. */
export async function printLibrary(): Promise<typeof import("../../lib/export")> {
  try {
    return await import("../../lib/export");
  } catch (cause) {
    throw new PrintError("library", "the export library did not load", { cause });
  }
}
