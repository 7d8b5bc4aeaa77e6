import type { Role } from "../../shared/role";
import { askToKeep } from "./local/ask-to-keep";
import { openOwnDrawer } from "./local/own-drawer";
import { openRoom, type Room, type RoomOptions } from "./open-room";

/** A room that falls again and again is opened ever later: our own choice, no source. */
const AGAIN_MS = { least: 0, more: 1000, most: 30_000 };

/**
 * Keeps a sheet open. When its room falls (the hub refused a change, or the sheet was put back to an older
 * state), everything that is not saved is set aside and a fresh room is opened, where it is done again; but
 * never under a hand that draws.
 *
 * @param onRoom called with each room, before the one it follows is closed
 * @returns closes the room and the drawer
 */
export function keepSheetOpen(
  sheetId: string,
  firstRole: Role,
  onRoom: (room: Room) => void,
): () => void {
  const drawer = openOwnDrawer(sheetId);
  let timer: ReturnType<typeof setTimeout> | null = null;
  let waitMs: number = AGAIN_MS.least;

  const open = (options: Pick<RoomOptions, "role" | "earlier" | "fellBy">): Room => {
    const room = openRoom({ sheetId, drawer, ...options });
    const look = () => {
      if (room.ink.get() === "saved") waitMs = AGAIN_MS.least;
      if (room.ink.get() === "kept") askToKeep();
      if (room.fallen.get() === null || room.review.held.get() || timer !== null) return;
      timer = setTimeout(renew, waitMs);
      waitMs = Math.min(AGAIN_MS.most, waitMs * 2 + AGAIN_MS.more);
    };
    for (const store of [room.ink, room.fallen, room.review.held]) store.subscribe(look);
    return room;
  };
  const renew = () => {
    timer = null;
    const before = now;
    if (before.review.held.get()) return; // a stroke was begun: it is waited for
    now = open({
      role: before.role.get(),
      earlier: Promise.resolve(before.setAside()),
      fellBy: before.fallen.get(),
    });
    onRoom(now);
    before.close();
  };
  let now = open({ role: firstRole, earlier: drawer.read(), fellBy: null });
  onRoom(now);
  return () => {
    if (timer !== null) clearTimeout(timer);
    now.close();
    drawer.close();
  };
}
