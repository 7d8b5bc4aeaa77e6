import type { Frame } from "../motion";
import type { SheetHead } from "./sheet";

/**
 * The shot's own number of a frame of the sheet.
 *
 * Units:   frames; the sheet's are counted from 1, the shot's from its head's `firstFrame`
 *
 * @example
 * shotFrame(17, { firstFrame: 1001 }); // => 1017
 * shotFrame(17, {}); // => 17
 */
export function shotFrame(frame: Frame, { firstFrame = 1 }: Pick<SheetHead, "firstFrame">): number {
  return frame + firstFrame - 1;
}
