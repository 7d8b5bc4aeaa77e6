import type * as Y from "yjs";
import type { OnPurpose } from "../gait";
import type { Critique } from "./critique";
import { isRecord } from "./field";
import { ID_FIELD, KEPT_SIDES_FIELD, ON_PURPOSE_FIELDS, SUBJECT_FIELD } from "./fields";
import { onPurposeIn } from "./schema";

/** What was said about a sheet, and the ids of what could not be read. */
export interface CritiqueReading {
  readonly critique: Critique;
  readonly skipped: readonly string[];
}

/** The critique as plain values. What cannot be read is left out and never stops the rest. */
export function readCritique(doc: Y.Doc): Critique {
  return readCritiqueCounting(doc).critique;
}

/** `readCritique`, and the ids of what was left out. */
export function readCritiqueCounting(doc: Y.Doc): CritiqueReading {
  const onPurpose: OnPurpose[] = [];
  const skipped: string[] = [];
  onPurposeIn(doc).forEach((value, id) => {
    const entry = readOnPurpose(id, value);
    if (entry === null) skipped.push(id);
    else onPurpose.push(entry);
  });
  return { critique: { onPurpose: onPurpose.sort(byId) }, skipped: skipped.sort() };
}

/** One entry of what is kept, or null where the value is none. */
export function readOnPurpose(id: string, value: unknown): OnPurpose | null {
  if (!ID_FIELD.fits(id) || !isRecord(value)) return null;
  const { check, scope, reason, measured, by } = ON_PURPOSE_FIELDS;
  return check.fits(value.check) &&
    scope.fits(value.scope) &&
    reason.fits(value.reason) &&
    measured.fits(value.measured) &&
    by.fits(value.by)
    ? {
        id,
        check: value.check,
        ...(SUBJECT_FIELD.fits(value.subject) ? { subject: value.subject } : {}),
        scope: value.scope,
        reason: value.reason,
        measured: value.measured,
        ...(KEPT_SIDES_FIELD.fits(value.sides) ? { sides: value.sides } : {}),
        by: value.by,
      }
    : null;
}

/** Entries by their ids, so that everyone has the same order. */
export function byId(a: { readonly id: string }, b: { readonly id: string }): number {
  return a.id < b.id ? -1 : a.id > b.id ? 1 : 0;
}
