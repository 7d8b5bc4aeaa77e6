import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll } from "vitest";
import { type HandedSheet, sheetFileText } from "../../lib/sheet";

/** A folder for the files that the tests of one file hand over: there from the first to the last of them. */
export interface OwnFiles {
  readonly folder: string;
  /** Writes a sheet, or any text, under a name; answers with its path. */
  fileOf(name: string, content: HandedSheet | string): Promise<string>;
}

export function ownFiles(): OwnFiles {
  let folder = "";
  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), "heelstrip-files-"));
  });
  afterAll(async () => {
    await rm(folder, { recursive: true });
  });
  return {
    get folder() {
      return folder;
    },
    async fileOf(name, content) {
      const path = join(folder, name);
      await writeFile(path, typeof content === "string" ? content : sheetFileText(content));
      return path;
    },
  };
}
