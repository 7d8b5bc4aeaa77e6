"use client";
import { amendHead } from "../../lib/sheet";
import { Row } from "../_controls";
import { useRoom, useSheet } from "../_room";
import { common, time } from "../_words";
import { type Timing, useWorkspace } from "../_workspace";
import { propose } from "./propose";

/** The tray's rows about time. */
export function TimeRows() {
  return (
    <>
      <h2>{time.group}</h2>
      <ProposalRow what="even-out" word={time.evenOut} hint={time.evenOutHint} mark="E" />
      <ProposalRow what="retime" word={time.retime} hint={time.retimeHint} mark="T" />
      <ExposureRow />
    </>
  );
}

interface ProposalRowProps {
  readonly what: Timing["what"];
  readonly word: string;
  readonly hint: string;
  readonly mark: string;
}

function ProposalRow({ what, word, hint, mark }: ProposalRowProps) {
  const { sheet } = useRoom();
  const open = useWorkspace((workspace) => workspace.timing?.what === what);
  const setTiming = useWorkspace((workspace) => workspace.setTiming);
  return (
    <Row
      hint={mark}
      title={hint}
      aria-pressed={open}
      onClick={() => setTiming(open ? null : propose(what, sheet.getSnapshot()))}
    >
      {word}
    </Row>
  );
}

/** On ones every frame is drawn, on twos every second. */
function ExposureRow() {
  const { drawing } = useRoom();
  const exposure = useSheet((sheet) => sheet.head.exposure);
  return (
    <Row
      title={time.exposureHint}
      onClick={() => amendHead(drawing, { exposure: exposure === 1 ? 2 : 1 })}
    >
      {common.drawn[exposure]}
    </Row>
  );
}
