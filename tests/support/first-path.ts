import { readFileSync } from "node:fs";
import { gunzipSync } from "node:zlib";
import type { Sheet } from "../../lib/sheet";

/** What the first finished path left behind; `tests/fixtures/first-path` says how it was made. */
const bytesOf = (name: string): Buffer =>
  readFileSync(new URL(`../fixtures/first-path/${name}`, import.meta.url));

/** A sheet as the code of that evening read it. Later code adds to it and changes nothing in it. */
export interface AsReadThen {
  readonly sheetId: string;
  /** The secret of the owner's link. */
  readonly owner: string;
  readonly sheet: Pick<Sheet, "head" | "panels">;
}

export const asReadThen = (): AsReadThen => JSON.parse(bytesOf("as-read-then.json").toString());

export const sheetFileOfThen = (): string => bytesOf("sheet-file.json").toString();

/** The whole of a document, as a Yjs update. */
export const documentOfThen = (name: "drawing" | "critique"): Uint8Array => bytesOf(`${name}.bin`);

/** The hub's database file. */
export const databaseOfThen = (): Uint8Array => gunzipSync(bytesOf("heelstrip.db.gz"));
