import { rename, rm, writeFile } from "node:fs/promises";
import { basename, dirname, join } from "node:path";
import { Trouble } from "./trouble";

/**
 * Writes a file whole or not at all: beside its place first, then put there in one step. What stood
 * there before stays until then.
 *
 * Errors: Trouble of one line where the place cannot be written
 */
export async function writeWhole(file: string, content: string | Uint8Array): Promise<void> {
  const beside = join(dirname(file), `.${basename(file)}.${process.pid}.part`);
  try {
    await writeFile(beside, content);
    await rename(beside, file);
  } catch (error) {
    await rm(beside, { force: true });
    const why = error instanceof Error ? error.message : String(error);
    throw new Trouble(`${file}: expected a place that can be written (${why})`, { cause: error });
  }
}
