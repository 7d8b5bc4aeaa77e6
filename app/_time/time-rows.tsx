"use client";
import { amendHead } from "../../lib/sheet";
import { useRoom, useSheet } from "../_room";
import { start, time } from "../_words";
import { type Timing, useWorkspace } from "../_workspace";
import { propose } from "./propose";

export interface TimeRowsProps {
  /** How a row of the tray looks. */
  readonly row: string | undefined;
}

/** The tray's rows about time. */
export function TimeRows({ row }: TimeRowsProps) {
  return (
    <>
      <h2>{time.group}</h2>
      <ProposalRow row={row} what="even-out" word={time.evenOut} hint={time.evenOutHint} mark="E" />
      <ProposalRow row={row} what="retime" word={time.retime} hint={time.retimeHint} mark="T" />
      <ExposureRow row={row} />
    </>
  );
}

interface ProposalRowProps extends TimeRowsProps {
  readonly what: Timing["what"];
  readonly word: string;
  readonly hint: string;
  readonly mark: string;
}

function ProposalRow({ row, what, word, hint, mark }: ProposalRowProps) {
  const { sheet } = useRoom();
  const open = useWorkspace((workspace) => workspace.timing?.what === what);
  const setTiming = useWorkspace((workspace) => workspace.setTiming);
  return (
    <button
      type="button"
      className={row}
      title={hint}
      aria-pressed={open}
      onClick={() => setTiming(open ? null : propose(what, sheet.getSnapshot()))}
    >
      {word}
      <kbd>{mark}</kbd>
    </button>
  );
}

/** On ones every frame is drawn, on twos every second. */
function ExposureRow({ row }: TimeRowsProps) {
  const { drawing } = useRoom();
  const exposure = useSheet((sheet) => sheet.head.exposure);
  return (
    <button
      type="button"
      className={row}
      title={time.exposureHint}
      onClick={() => amendHead(drawing, { exposure: exposure === 1 ? 2 : 1 })}
    >
      {exposure === 1 ? start.ones : start.twos}
    </button>
  );
}
