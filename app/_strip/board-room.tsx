"use client";
import { useEffect, useState } from "react";
import type { Role } from "../../shared/role";
import { openRoom, type Room, RoomContext, useStoreValue } from "../_room";
import { createWorkspace, WorkspaceContext, type WorkspaceStore } from "../_workspace";
import { Board } from "./board";
import { Skeleton } from "./skeleton";

export interface BoardRoomProps {
  readonly sheetId: string;
  readonly role: Role;
}

const MARGIN_STANDS_PX = 1240; // wide enough for strip and margin side by side, as in board.module.css

interface Opened {
  readonly room: Room;
  readonly workspace: WorkspaceStore;
}

/** Opens the sheet's room and this person's workspace, and closes what it opened. */
export function BoardRoom({ sheetId, role }: BoardRoomProps) {
  const [opened, setOpened] = useState<Opened | null>(null);
  useEffect(() => {
    const room = openRoom(sheetId, role);
    const workspace = createWorkspace();
    workspace.getState().openMargin(window.innerWidth > MARGIN_STANDS_PX);
    setOpened({ room, workspace });
    return () => room.close();
  }, [sheetId, role]);
  if (opened === null) return <Skeleton />;
  return (
    <RoomContext value={opened.room}>
      <WorkspaceContext value={opened.workspace}>
        <WhenReady room={opened.room} />
      </WorkspaceContext>
    </RoomContext>
  );
}

function WhenReady({ room }: { readonly room: Room }) {
  const ready = useStoreValue(room.ready);
  return ready ? <Board /> : <Skeleton />;
}
