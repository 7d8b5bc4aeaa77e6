"use client";
import { useSheet } from "../_room";
import { common, remarks as words } from "../_words";
import type { RemarkGroup } from "./group-remarks";
import styles from "./margin.module.css";
import { RemarkCard } from "./remark-card";

/** Remarks by the panel where each is seen. */
export function RemarkGroupList({ groups }: { readonly groups: readonly RemarkGroup[] }) {
  return groups.map((group) => <GroupSection key={group.panel ?? ""} group={group} />);
}

function GroupSection({ group }: { readonly group: RemarkGroup }) {
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
    <section className={styles.group}>
      <h3>{heading}</h3>
      <ul>
        {group.remarks.map((entry) => (
          <li key={`${entry.remark.check} ${entry.remark.title} ${entry.rank}`}>
            <RemarkCard {...entry} />
          </li>
        ))}
      </ul>
    </section>
  );
}
