"use client";
import { type ComponentType, useState } from "react";
import { useSheet } from "../_room";
import { common, remarks as words } from "../_words";
import { useWorkspace } from "../_workspace";
import { countIn, foldGroups } from "./fold-groups";
import { groupId } from "./group-id";
import type { RemarkGroup } from "./group-remarks";
import styles from "./margin.module.css";
import type { RemarkActsProps } from "./remark-acts";
import { RemarkCard } from "./remark-card";

export interface RemarkGroupListProps {
  readonly groups: readonly RemarkGroup[];
  readonly Acts: ComponentType<RemarkActsProps>;
}

/** Remarks by the panel where each is seen; what is too much to read at once waits, folded. */
export function RemarkGroupList({ groups, Acts }: RemarkGroupListProps) {
  const { shown, folded } = foldGroups(groups);
  return (
    <>
      {shown.map((group) => (
        <GroupSection key={group.panel ?? ""} group={group} Acts={Acts} />
      ))}
      {folded.length > 0 && <FoldedGroups groups={folded} Acts={Acts} />}
    </>
  );
}

/** It opens by itself when the panel in hand is among those it holds. */
function FoldedGroups({ groups, Acts }: RemarkGroupListProps) {
  const [open, setOpen] = useState(false);
  const inHand = useWorkspace((workspace) => workspace.panel);
  const holdsIt = inHand !== null && groups.some(({ panel }) => panel === inHand);
  return (
    <details
      className={styles.fold}
      open={open || holdsIt}
      onToggle={(event) => setOpen(event.currentTarget.open)}
    >
      <summary>{words.moreRemarks(countIn(groups))}</summary>
      {groups.map((group) => (
        <GroupSection key={group.panel ?? ""} group={group} Acts={Acts} />
      ))}
    </details>
  );
}

interface GroupSectionProps {
  readonly group: RemarkGroup;
  readonly Acts: ComponentType<RemarkActsProps>;
}

function GroupSection({ group, Acts }: GroupSectionProps) {
  const panel = useSheet((sheet) => sheet.panels.find(({ id }) => id === group.panel));
  const heading =
    panel === undefined
      ? words.noPanel
      : words.group(
          common.pose[panel.pose],
          panel.weightOn === null ? null : common.side[panel.weightOn],
          panel.frame,
        );
  return (
    <section className={styles.group} id={panel === undefined ? undefined : groupId(panel.id)}>
      <h3>{heading}</h3>
      <ul>
        {group.remarks.map((entry) => (
          <li key={`${entry.remark.check} ${entry.remark.title} ${entry.rank}`}>
            <RemarkCard {...entry} Acts={Acts} />
          </li>
        ))}
      </ul>
    </section>
  );
}
