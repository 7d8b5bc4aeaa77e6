import type { OnPurpose } from "../gait";
import type { Field } from "./field";
import { KEPT_SIDES_FIELD, ON_PURPOSE_FIELDS, SUBJECT_FIELD } from "./fields";
import { requireField } from "./require-field";

/** Errors: RangeError unless every field of the entry fits. */
export function requireOnPurpose(who: string, entry: Omit<OnPurpose, "id">): void {
  for (const [name, field] of Object.entries<Field<unknown>>(ON_PURPOSE_FIELDS)) {
    requireField(who, `${name} that is`, field, entry[name as keyof typeof entry]);
  }
  if (entry.subject !== undefined) {
    requireField(who, "a subject that is", SUBJECT_FIELD, entry.subject);
  }
  if (entry.sides !== undefined) {
    requireField(who, "sides that are", KEPT_SIDES_FIELD, entry.sides);
  }
}
