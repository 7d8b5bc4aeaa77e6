"use client";
import { useEffect } from "react";
import { useRoom } from "../_room";
import { useWorkspaceStore } from "../_workspace";
import { frameAt, runOf } from "./playhead";

/**
 * Runs the playhead while its owner is on screen. The sheet is read anew each frame, so that what
 * others draw or move meanwhile plays at once; a change of speed goes on from where the head is.
 */
export function usePlayhead(): void {
  const room = useRoom();
  const workspace = useWorkspaceStore();
  useEffect(() => {
    let last: number | null = null;
    let secondsIn = 0; // sheet time: grows slower at half speed
    let asked = requestAnimationFrame(function run(now) {
      const { speed, cycles, playFrame, setPlayFrame } = workspace.getState();
      secondsIn += last === null ? 0 : ((now - last) / 1000) * speed;
      last = now;
      const sheet = room.sheet.getSnapshot();
      const head = runOf(sheet);
      const frame =
        head === null ? null : frameAt(head, secondsIn, sheet.head.framesPerSecond, cycles);
      if (frame !== playFrame) setPlayFrame(frame);
      asked = requestAnimationFrame(run);
    });
    return () => cancelAnimationFrame(asked);
  }, [room, workspace]);
}
