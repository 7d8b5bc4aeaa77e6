import { readFile, stat } from "node:fs/promises";
import {
  type HandedSheet,
  MAX_SHEET_FILE_BYTES,
  readSheetFile,
  SheetFileError,
  tooLarge,
} from "../lib/sheet";
import { onOneLine } from "./on-one-line";
import { Trouble } from "./trouble";

/**
 * The sheet in a file. Its size is asked for before anything is read.
 * Errors: Trouble of one line, which names the file
 */
export async function loadSheet(file: string): Promise<HandedSheet> {
  if (/\.(bvh|glb|gltf)$/i.test(file)) {
    throw new Trouble(`${onOneLine(file)}: expected a sheet (.json); motion files come later`);
  }
  try {
    return readSheetFile(await textOf(file));
  } catch (error) {
    throw new Trouble(`${onOneLine(file)}: ${inOneLine(error)}`, { cause: error });
  }
}

async function textOf(file: string): Promise<string> {
  const about = await stat(file);
  if (about.isDirectory()) throw new Trouble("expected a file, got a folder");
  if (about.size > MAX_SHEET_FILE_BYTES) throw tooLarge(about.size);
  return readFile(file, "utf8");
}

/** What went wrong, worded for a person. Errors: passes on what nobody at the command line can mend. */
function inOneLine(error: unknown): string {
  if (error instanceof SheetFileError || error instanceof Trouble) return error.message;
  const code = error instanceof Error && "code" in error ? error.code : undefined;
  if (code === "ENOENT") return "expected a file, there is none of this name";
  if (code === "EACCES" || code === "EPERM") return "expected a file that may be read";
  if (code === "ENOTDIR") return "expected a file in a folder, part of this path is no folder";
  if (code === "ENAMETOOLONG") return "expected a file, no file can have so long a name";
  if (typeof code === "string") return `expected a file that can be read (${code})`;
  throw error;
}
