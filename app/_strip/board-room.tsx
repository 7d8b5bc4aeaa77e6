"use client";
import { useEffect, useState } from "react";
import type { Role } from "../../shared/role";
import { Notice } from "../_door/notice";
import { stateWords } from "../_people";
import { keepSheetOpen, type Room, RoomContext, useStoreValue } from "../_room";
import { createWorkspace, WorkspaceContext, type WorkspaceStore } from "../_workspace";
import { Board } from "./board";
import { KeptHere } from "./kept-here";
import { Skeleton } from "./skeleton";

export interface BoardRoomProps {
  readonly sheetId: string;
  readonly role: Role;
}

interface Opened {
  readonly room: Room;
  readonly workspace: WorkspaceStore;
}

/**
 * Opens the sheet's room and this person's workspace, and closes what it opened. A room that is opened
 * afresh keeps the workspace: the tool in hand, the zoom, what is looked at.
 */
export function BoardRoom({ sheetId, role }: BoardRoomProps) {
  const [opened, setOpened] = useState<Opened | null>(null);
  useEffect(() => {
    const workspace = createWorkspace();
    return keepSheetOpen(sheetId, role, (room) => setOpened({ room, workspace }));
  }, [sheetId, role]);
  if (opened === null) return <Skeleton />;
  return (
    <RoomContext value={opened.room}>
      <WorkspaceContext value={opened.workspace}>
        <WhenReady key={opened.room.drawing.clientID} room={opened.room} />
      </WorkspaceContext>
    </RoomContext>
  );
}

function WhenReady({ room }: { readonly room: Room }) {
  const ready = useStoreValue(room.ready);
  const shutBy = useStoreValue(room.shutBy);
  if (ready) return <Board />;
  if (shutBy === null) return <Skeleton />;
  const { words, why } = stateWords("shut", room.role.get(), shutBy);
  return (
    <Notice title={words} body={why} more={<KeptHere sheetId={room.sheetId} />} /> // it shut before anything was fetched
  );
}
