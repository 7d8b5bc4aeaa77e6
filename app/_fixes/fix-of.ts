import { type Fix, type Remark, toldAs, type Walk } from "../../lib/gait";
import { measuredWalkOf, type Sheet } from "../../lib/sheet";
import { readerInUse } from "../_room";

/** What was worked out for a sheet, for as long as somebody holds it. */
interface Found {
  readonly walk: Walk;
  readonly fixes: Map<string, Fix | null>;
}

const foundIn = new WeakMap<Sheet, Found>();

/** The walk of a sheet, the same for as long as somebody holds the sheet. */
export function walkFound(sheet: Sheet): Walk {
  return found(sheet).walk;
}

function found(sheet: Sheet): Found {
  const known = foundIn.get(sheet) ?? { walk: measuredWalkOf(sheet), fixes: new Map() };
  foundIn.set(sheet, known);
  return known;
}

/** A remark's fix on a sheet as it is, worked out once; null where none is known. */
export function fixOf(sheet: Sheet, remark: Remark): Fix | null {
  const { walk, fixes } = found(sheet);
  const key = `${remark.yardstick} ${toldAs(remark)}`;
  const known = fixes.get(key);
  if (known !== undefined) return known;
  const fix = readerInUse().fixFor(walk, remark);
  fixes.set(key, fix);
  return fix;
}

/** What a remark is known by from one review to the next: its check, its side, the panel where it is seen. */
export function remarkName({ check, side, panels }: Remark): string {
  return [check, side, panels.at(-1)].join(" ");
}
