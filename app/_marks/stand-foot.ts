import { type ViewMarks, withFootOfStand } from "../../lib/body";
import { walkLegLength } from "../../lib/gait";
import type { View } from "../../lib/geometry";
import type { Sheet } from "../../lib/sheet";

/** The foot that other panels' ankles and balls follow from. */
export interface StandFoot {
  readonly stand: ViewMarks;
  /** Panel units a leg. */
  readonly legUnits: number;
}

/** Every paper asks; a sheet answers once. */
const bySheet = new WeakMap<Sheet, StandFoot | null>();
/** The same object for as long as stand and leg are the same, so that no paper is painted in vain. */
const known = new WeakMap<ViewMarks, StandFoot>();

/** The stand's foot, or null where there is no stand to tell it. */
export function standFootOf(sheet: Sheet): StandFoot | null {
  const told = bySheet.get(sheet);
  if (told !== undefined) return told;
  const foot = readStandFoot(sheet);
  bySheet.set(sheet, foot);
  return foot;
}

function readStandFoot(sheet: Sheet): StandFoot | null {
  const stand = sheet.panels.find(({ pose }) => pose === "stand")?.marks.side;
  const leg = stand === undefined ? null : walkLegLength(sheet);
  if (stand === undefined || leg === null || leg.kind === "cannot-tell") return null;
  const before = known.get(stand);
  if (before?.legUnits === leg.value) return before;
  const foot = { stand, legUnits: leg.value };
  known.set(stand, foot);
  return foot;
}

/** One view's marks with those that follow from the stand's foot: the side view's alone do. */
export function withFollowing(marks: ViewMarks, view: View, foot: StandFoot | null): ViewMarks {
  if (view === "front" || foot === null || marks === foot.stand) return marks;
  return withFootOfStand(marks, foot.stand, foot.legUnits);
}
