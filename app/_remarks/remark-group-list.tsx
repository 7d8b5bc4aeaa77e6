"use client";
import type { ComponentType } from "react";
import { useSheet } from "../_room";
import { common, remarks as words } from "../_words";
import type { RemarkGroup } from "./group-remarks";
import styles from "./margin.module.css";
import type { RemarkActsProps } from "./remark-acts";
import { RemarkCard } from "./remark-card";

export interface RemarkGroupListProps {
  readonly groups: readonly RemarkGroup[];
  readonly Acts: ComponentType<RemarkActsProps>;
}

/** Remarks by the panel where each is seen. */
export function RemarkGroupList({ groups, Acts }: RemarkGroupListProps) {
  return groups.map((group) => <GroupSection key={group.panel ?? ""} group={group} Acts={Acts} />);
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
    <section className={styles.group} data-remarks-at={group.panel}>
      <h3>{heading}</h3>
      <ul>
        {group.remarks.map((entry) => (
          <li key={`${entry.remark.check} ${entry.remark.title} ${entry.rank}`}>
            <RemarkCard title={entry.remark.title} remarks={[entry]} Acts={Acts} />
          </li>
        ))}
      </ul>
    </section>
  );
}
