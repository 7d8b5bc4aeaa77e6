import type { Frame } from "../../motion";
import type { PanelId, Sheet, SheetHead } from "../sheet";
import type { TimedPanel } from "./sections";

/** What timing needs of a sheet. */
export interface TimedSheet {
  readonly head: Pick<
    Sheet["head"],
    "exposure" | "framesPerStep" | "stepLength" | "advance" | "loop"
  >;
  /** In the order of the ruler, as `byFrame` has it. */
  readonly panels: readonly TimedPanel[];
}

/** Which of the strip is timed anew: all of it, or the one step that begins with a contact. */
export type TimeScope = "strip" | { readonly step: PanelId };

/** New frames for panels, shown before they are written: only what changes is in it. */
export interface TimePlan {
  readonly frames: ReadonlyMap<PanelId, Frame>;
  readonly head: Partial<Pick<SheetHead, "framesPerStep" | "loop" | "advance">>;
}

/** Leaves out of new frames what stands there already. */
export function movedOnly(
  panels: readonly TimedPanel[],
  frames: ReadonlyMap<PanelId, Frame>,
): ReadonlyMap<PanelId, Frame> {
  return new Map(
    panels.flatMap(({ id, frame }): [PanelId, Frame][] => {
      const to = frames.get(id);
      return to === undefined || to === frame ? [] : [[id, to]];
    }),
  );
}
