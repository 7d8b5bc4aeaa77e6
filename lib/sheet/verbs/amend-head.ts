import type * as Y from "yjs";
import { advanceOf } from "../advance";
import type { Field } from "../field";
import { HEAD_FIELDS } from "../fields";
import { readHead } from "../read-head";
import { requireField } from "../require-field";
import { headOf, ORIGIN } from "../schema";
import type { SheetHead } from "../sheet";

/**
 * Changes fields of the sheet's head. When two amend it, each field keeps the later write. The advance
 * follows a new step length or new frames per step as long as nobody set it to something else.
 *
 * Errors:  RangeError for a value the field may not have, before anything is written
 */
export function amendHead(doc: Y.Doc, changes: Partial<SheetHead>): void {
  const names = Object.keys(changes) as (keyof SheetHead)[];
  for (const name of names) {
    const field: Field<unknown> | undefined = HEAD_FIELDS[name];
    if (field === undefined) throw new RangeError(`amendHead knows no field ${name}`);
    requireField("amendHead", `${name} that is`, field, changes[name]);
  }
  doc.transact(() => {
    const head = headOf(doc);
    const { advance } = followed(doc, changes);
    for (const [name, value] of Object.entries({ ...changes, advance })) {
      if (value !== undefined) head.set(name, value);
    }
  }, ORIGIN.hand);
}

/** The advance after these changes, where it was not set by hand before. */
function followed(doc: Y.Doc, changes: Partial<SheetHead>): Pick<Partial<SheetHead>, "advance"> {
  if (changes.advance !== undefined) return { advance: changes.advance };
  const { stepLength, framesPerStep } = changes;
  if (stepLength === undefined && framesPerStep === undefined) return {};
  const before = readHead(doc, () => {});
  if (before.advance !== advanceOf(before.stepLength, before.framesPerStep)) return {};
  return {
    advance: advanceOf(stepLength ?? before.stepLength, framesPerStep ?? before.framesPerStep),
  };
}
