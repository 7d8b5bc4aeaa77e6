import type { Change } from "../../lib/gait";

/** What is kept on purpose. */
export const purpose = {
  keep: "Keep on purpose",
  keepNamed: (title: string) => `Keep on purpose: ${title}`,
  keepIt: "Keep it",
  scope: "It is meant",
  scopes: {
    panel: "in this panel",
    side: (side: string) => `on the ${side} side`,
    walk: "in the whole walk",
  },
  atFrame: (frame: number) => `at frame ${frame}`,
  reason: "Why, if you like to say",
  reasonExample: "the sack weighs that shoulder down",
  heading: (count: number) => `${count} kept on purpose`,
  andMore: (count: number) => `and ${count} more`,
  by: (name: string, scope: string) => (name === "" ? scope : `${name}, ${scope}`),
  show: "Show",
  showNamed: (title: string) => `Show what is kept: ${title}`,
  drop: "No longer",
  dropNamed: (title: string) => `No longer on purpose: ${title}`,
  keptSaid: (title: string) => `Kept on purpose: ${title}. Undo takes it back.`,
  droppedSaid: (title: string) => `No longer on purpose: ${title}. Undo takes it back.`,
  lapsedName: "No longer what was kept",
  lapsed: (title: string) => `Was on purpose: ${title}`,
  changed: {
    reversed: "Its reading has turned the other way since, so it is told again.",
    halved: "Its reading is less than half of what it was, so it is told again.",
    doubled: "Its reading is more than double what it was, so it is told again.",
    elsewhere: "It is also read on a side where it was not, so it is told again.",
  } satisfies Record<Change, string>,
  settled: (count: number) => `${count} kept on purpose, with nothing to remark now`,
  settledWhy: "Kept in case it comes back.",
  keepAgain: "Keep as it is now",
  keepAgainNamed: (title: string) => `Keep as it is now: ${title}`,
  badge: (pose: string, frame: number, titles: readonly string[]) =>
    `Kept on purpose at ${pose}, frame ${frame}: ${titles.join(", ")}; open why`,
} as const;
