import type { Review } from "../../lib/gait";
import type { Sheet } from "../../lib/sheet";
import type { Room } from "../_room";
import { PrintError } from "./print-error";

/**
 * The sheet as it stands, and what is read of it. Where the walk was not read yet, that is done first.
 *
 * Errors:  PrintError "reader" where what reads it cannot be fetched
 */
export async function readSheet(
  room: Pick<Room, "review" | "sheet">,
): Promise<{ readonly sheet: Sheet; readonly review: Review }> {
  try {
    const review = await room.review.read();
    return { sheet: room.sheet.getSnapshot(), review };
  } catch (cause) {
    throw new PrintError("reader", "what reads the walk did not load", { cause });
  }
}
