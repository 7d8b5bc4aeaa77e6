/** As long as presence may carry it (see shared/presence). */
export const NAME_LENGTH = 40;

/** A name as typed, with its spaces put in order; null where there is nothing left to call. */
export function readName(typed: string): string | null {
  const name = typed.replace(/\s+/g, " ").trim().slice(0, NAME_LENGTH).trim();
  return name === "" ? null : name;
}
