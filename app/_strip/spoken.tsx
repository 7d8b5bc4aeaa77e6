"use client";
import { useEffect, useRef } from "react";
import { useRoom } from "../_room";
import { useWorkspace, useWorkspaceStore } from "../_workspace";
import { remarkChange } from "./remark-change";
import { useSpokenReading } from "./use-spoken-reading";

const CALM_MS = 700; // our own choice: a row of arrow keys on a mark is one change, not ten

/**
 * The board's one voice for a screen reader: a panel removed, a step undone, a remark that came or went.
 * It keeps silent while the pen is down.
 */
export function Spoken() {
  useSpokenReading();
  useSpokenRemarks();
  const penDown = useWorkspace((workspace) => workspace.penDown);
  const said = useWorkspace((workspace) => workspace.said);
  const heard = useRef(said);
  if (!penDown) heard.current = said;
  const { text, turn } = heard.current;
  return (
    <div className="heard" role="status" data-spoken>
      {/* A new element each time, so that the same words twice are heard twice. */}
      <p key={turn}>{text}</p>
    </div>
  );
}

/** Says what became of the remarks once the sheet has been left alone for a moment. */
function useSpokenRemarks(): void {
  const { review } = useRoom();
  const workspace = useWorkspaceStore();
  useEffect(() => {
    let told = review.get();
    let calm: ReturnType<typeof setTimeout> | undefined;
    const tell = () => {
      const now = review.get();
      const same = now?.yardstick === told?.yardstick; // another yardstick is another question
      const change = same && told !== null && now !== null ? remarkChange(told, now) : null;
      told = now;
      if (change !== null) workspace.getState().say(change);
    };
    const stop = review.subscribe(() => {
      clearTimeout(calm);
      calm = setTimeout(tell, CALM_MS);
    });
    return () => {
      stop();
      clearTimeout(calm);
    };
  }, [review, workspace]);
}
