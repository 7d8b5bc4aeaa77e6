import type * as Y from "yjs";
import { headOf, ORIGIN, SCHEMA } from "./schema";
import { SheetError } from "./sheet-error";

/** Takes a sheet's documents from one schema to the next. It changes what it must and keeps the rest. */
export interface Migration {
  /** The schema it starts from; it ends at the one after. */
  readonly from: number;
  readonly drawing: (doc: Y.Doc) => void;
  readonly critique: (doc: Y.Doc) => void;
}

export interface Migrations {
  /** The schema to arrive at. */
  readonly to: number;
  readonly steps: readonly Migration[];
}

/** Every step up to today's schema. There has been one schema so far, so there is none. */
export const MIGRATIONS: Migrations = { to: SCHEMA, steps: [] };

/**
 * Brings a document to today's schema, in one transaction that nobody can undo; one that is there
 * already is left as it is. Done where the document is loaded, before anyone sees it. Two servers that
 * did it to one document at once would both write: a step sets values and never adds to lists.
 * A document without a readable number counts as today's; whatever makes no sense is skipped when read.
 *
 * Errors:  SheetError "newer-version", and the document is as it was;
 *          RangeError where a step is missing
 */
export function migrate(
  doc: Y.Doc,
  kind: "drawing" | "critique",
  { to, steps }: Migrations = MIGRATIONS,
): void {
  const from = schemaOf(doc) ?? to;
  if (from > to) {
    throw new SheetError("newer-version", `expected schema up to ${to}, got ${from}`);
  }
  const way = Array.from({ length: to - from }, (_, index) => stepFrom(from + index, steps));
  if (way.length === 0) return;
  doc.transact(() => {
    for (const step of way) step[kind](doc);
    headOf(doc).set("schema", to);
  }, ORIGIN.ground);
}

function schemaOf(doc: Y.Doc): number | null {
  const schema = headOf(doc).get("schema"); // both documents keep it in the same map
  return typeof schema === "number" && Number.isInteger(schema) && schema >= 1 ? schema : null;
}

function stepFrom(schema: number, steps: readonly Migration[]): Migration {
  const step = steps.find(({ from }) => from === schema);
  if (step === undefined) throw new RangeError(`migrate needs a step from schema ${schema}`);
  return step;
}
