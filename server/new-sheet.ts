import { randomBytes } from "node:crypto";
import * as Y from "yjs";
import {
  brindleExample,
  capturedExample,
  type HandedSheet,
  layOut,
  migrate,
  prepareCritique,
  readSheetFile,
  writeSheet,
} from "../lib/sheet";
import type { CreateSheetRequest } from "../shared/api";
import type { ExampleName } from "../shared/api-answers";
import type { DocumentName } from "../shared/document-name";

const ID_BYTES = 6; // eight base64url characters

/**
 * The first bytes of a new sheet's two documents. A sheet is begun here, once, and never in a page:
 * two pages that both began one would leave everything twice.
 *
 * Errors:  SheetFileError for a file that is no sheet we can read
 */
export async function newSheet(wish: CreateSheetRequest): Promise<{
  readonly [Name in DocumentName]: Uint8Array;
}> {
  const sheet = sheetOf(wish);
  return {
    drawing: encoded((doc) => writeSheet(doc, sheet)),
    critique: encoded((doc) => prepareCritique(doc, sheet.onPurpose)),
  };
}

/**
 * Brings a stored document to today's schema before anyone is let in.
 *
 * Errors:  SheetError "newer-version"
 */
export function prepareDocument(name: DocumentName, doc: Y.Doc): void {
  migrate(doc, name);
}

function sheetOf(wish: CreateSheetRequest): HandedSheet {
  if (wish.from === "brief") return layOut(wish.brief, newId);
  if (wish.from === "example") return EXAMPLES[wish.example](newId);
  return readSheetFile(typeof wish.file === "string" ? wish.file : JSON.stringify(wish.file));
}

const EXAMPLES: Readonly<Record<ExampleName, (newId: () => string) => HandedSheet>> = {
  "captured-walk": capturedExample,
  brindle: brindleExample,
};

function newId(): string {
  return randomBytes(ID_BYTES).toString("base64url");
}

function encoded(fill: (doc: Y.Doc) => void): Uint8Array {
  const doc = new Y.Doc();
  fill(doc);
  const bytes = Y.encodeStateAsUpdate(doc);
  doc.destroy();
  return bytes;
}
