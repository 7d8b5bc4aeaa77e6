import type { Role } from "../../shared/role";

/** Links to a sheet: a page over the board, so its words are fetched with it. */
export const invite = {
  roleMay: {
    owner: "draws, and makes and closes links",
    draw: "draws on this sheet",
    critique: "for critique: does not draw",
    view: "looks only",
  } satisfies Record<Role, string>,
  title: "Invite to this sheet",
  notYours:
    "Only the owner of a sheet makes links to it. Ask whoever sent you yours: they started the sheet or know who did.",
  lead: "A link opens this sheet to whoever has it. Give each person or group its own, so that one can be closed without the others.",
  role: "What they may do",
  label: "For whom",
  labelHint: "A note to yourself, such as “lighting” or “Monday's critique”.",
  make: "Make a link",
  making: "Making the link…",
  made: (role: string) => `The new ${role} link`,
  once: "It is shown this once: copy it now. A lost link cannot be read again, only replaced.",
  copy: "Copy",
  copied: "Copied.",
  copyByHand:
    "This page may not use the clipboard. The link is selected: copy it with the keyboard.",
  links: "Links to this sheet",
  reading: "Fetching the links…",
  unread: "The server does not answer, so the links cannot be shown.",
  again: "Try again",
  none: "No links yet.",
  noLabel: "no note",
  since: (when: string) => `since ${when}`,
  closed: (when: string) => `closed ${when}`,
  ended: (when: string) => `ended ${when}`,
  until: (when: string) => `until ${when}`,
  used: (when: string) => `last came by it ${when}`,
  unused: "nobody came by it yet",
  ends: "It ends",
  endsIn: (days: number) =>
    days === 0 ? "never, until you revoke it" : days === 1 ? "in a day" : `in ${days} days`,
  roleNamed: (role: string, label: string) =>
    label === "" ? `What the ${role} link may do` : `What the ${role} link “${label}” may do`,
  revoke: "Revoke",
  revokeNamed: (role: string, label: string) =>
    label === "" ? `Revoke the ${role} link` : `Revoke the ${role} link “${label}”`,
  revokeAsk: (label: string, used: boolean) =>
    used
      ? `Whoever came by this link${label === "" ? "" : ` (“${label}”)`} loses the sheet at once.`
      : "Nobody has come by this link yet; it will open nothing.",
  revokeYes: "Revoke it",
  revokeNo: "Keep it",
  failed: (what: string) => `That did not go through: ${what}`,
  unreachable:
    "the hub could not be reached; nothing was changed. Try again when the line is back.",
} as const;
