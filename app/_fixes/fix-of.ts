import type { Fix, Remark, Walk } from "../../lib/gait";
import { type Sheet, walkOf } from "../../lib/sheet";
import { readerAtHand } from "../_room";

/** What was worked out for a sheet, for as long as somebody holds it. */
interface Found {
  readonly walk: Walk;
  readonly fixes: Map<string, Fix | null>;
}

const foundIn = new WeakMap<Sheet, Found>();

/** A remark's fix on a sheet as it is, worked out once; null where none is known. */
export function fixOf(sheet: Sheet, remark: Remark): Fix | null {
  const found = foundIn.get(sheet) ?? { walk: walkOf(sheet), fixes: new Map() };
  foundIn.set(sheet, found);
  const key = `${remark.yardstick} ${remarkName(remark)}`;
  const known = found.fixes.get(key);
  if (known !== undefined) return known;
  const reader = readerAtHand();
  if (reader === null) throw new Error("a remark is there only once the walk was read");
  const fix = reader.fixFor(found.walk, remark);
  found.fixes.set(key, fix);
  return fix;
}

/** What a remark is known by from one review to the next: its check, its side, the panel where it is seen. */
export function remarkName({ check, side, panels }: Remark): string {
  return [check, side, panels.at(-1)].join(" ");
}
