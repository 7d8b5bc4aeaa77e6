import type { Walk } from "../gait";
import type { Sheet } from "./sheet";

/** The sheet as the gait library measures it. Panels are the sheet's own, so what is kept by them holds. */
export function walkOf({ head, panels }: Sheet): Walk {
  const { kind, framesPerSecond, exposure, travel, ground, advance, build, load } = head;
  const solved = ground === "solved" ? { ground } : {};
  const carried = load === undefined ? {} : { load };
  const pace = { kind, framesPerSecond, exposure, travel, ...solved, advance };
  return { ...pace, build, ...carried, panels };
}
