import type { Role } from "../../shared/role";
import type { InkState, ShutCause } from "../_room";

interface Said {
  /** What stands in the head band. */
  readonly words: string;
  /** What it means for whoever draws, told on hover and focus. */
  readonly why: string;
}

export const people = {
  heading: "People on this sheet",
  you: "you",
  chipOfMe: (name: string) => `You are here as ${name}. Change name or hue.`,
  others: (count: number) => (count === 1 ? "1 more" : `${count} more`),

  greet: {
    label: "Introduce yourself",
    words: (name: string) => `Others see you as “${name}”.`,
    give: "Give a name",
    later: "Later",
  },

  name: {
    title: "Your name and hue",
    name: "Name",
    hint: "Others see it beside your pencil. It is kept in this browser.",
    needed: "A name of at least one letter is needed.",
    hue: "Hue of your pencil",
    keep: "Keep",
  },
  hues: {
    265: "violet",
    215: "blue",
    140: "green",
    95: "leaf green",
    50: "gold",
    300: "purple",
    0: "red",
    190: "turquoise",
  } as Readonly<Record<number, string>>,
  hue: (degrees: number) => `hue ${degrees}°`,

  role: {
    owner: "owner",
    draw: "draw",
    critique: "critique",
    view: "view",
  } satisfies Record<Role, string>,

  state: {
    opening: { words: "opening the sheet…", why: "What is on the sheet is on its way here." },
    saved: {
      words: "all ink saved",
      why: "Everything that was drawn here is on the hub's disk. You can leave at any time.",
    },
    saving: {
      words: "saving…",
      why: "Handed over; the hub has not yet said that it is on its disk.",
    },
    "in-hand": {
      words: "pen down…",
      why: "What is under your pen is saved once you lift it. Everything before it is on the hub's disk.",
    },
    "in-hand-unsaved": {
      words: "not saved, pen down",
      why: "The line is down, or the server cannot write. What is under your pen is kept on this machine once you lift it, if this browser keeps anything; then this line says so.",
    },
    "not-saved": {
      words: "not saved, stay on this page",
      why: "What you drew last is in this tab alone: this browser keeps nothing on this machine. It is handed over as soon as the line is back; closing the tab before that loses it.",
    },
    kept: {
      words: "offline, kept on this machine",
      why: "What you drew last is on this machine's disk, in this browser. It is handed over as soon as the line is back, also when this page was closed meanwhile and is opened again. Until then nobody else sees it. Stay on this page to go on: without the line the sheet cannot be opened.",
    },
    unwritten: {
      words: "not saved, stay on this page",
      why: "The server's disk is full or fails, and this browser keeps nothing on this machine: what you drew last is in memory alone. It is saved as soon as the disk takes it. Stay on this page, and tell whoever runs the server.",
    },
    "unwritten-kept": {
      words: "the server cannot write, kept on this machine",
      why: "The server's disk is full or fails. What you drew last is on this machine's disk, in this browser, and is saved as soon as the server's disk takes it. Tell whoever runs the server.",
    },
    offline: {
      words: "offline, all ink so far is saved",
      why: "The line is down. Everything drawn so far is on the hub's disk. You do not see what others draw, nor they what you draw from now on. Stay on this page to go on: without the line the sheet cannot be opened.",
    },
    refused: {
      words: "not saved, a change was refused",
      why: "The sheet did not take something that was drawn here. It has not gone: the note below the head band says what it is, and saves it as a file.",
    },
  } satisfies Record<Exclude<InkState, "shut">, Said>,
  shut: {
    revoked: {
      words: "closed: the link was withdrawn",
      why: "The link that brought you here no longer opens this sheet. What you see is what was here last; nothing can be drawn any more. Ask its owner for another link.",
    },
    gone: {
      words: "closed: the sheet is gone",
      why: "The server no longer has this sheet. What you see is what was here last: export it as a file to keep it.",
    },
    elsewhere: {
      words: "closed: this page is open elsewhere",
      why: "Another browser is on the sheet as this very page. Nothing more is saved from here; load the page again to go on.",
    },
    "newer-version": {
      words: "closed: made by a newer Heelstrip",
      why: "This sheet was made by a newer Heelstrip; update this server to open it. Nothing of it was changed.",
    },
    misheard: {
      words: "closed: the hub could not read this page",
      why: "What this page sent made no sense to the hub, which no longer listens to it. Load the page again to go on; what is not saved must be drawn again.",
    },
    "shut-out": {
      words: "closed: this browser is shut out",
      why: "Three changes from this browser each broke the sheet on the hub, which repaired it and listens to this browser no more until it is started anew. What is not saved is kept on this machine if this browser may; what you see can be exported as a file. Tell whoever runs the server.",
    },
    "no-way-in": {
      words: "closed: this browser is no longer let in",
      why: "While the line was away, the link that brought you here was withdrawn, or the sheet was. Nothing more is saved from here; what you see can still be exported as a file. Ask the sheet's owner for another link.",
    },
  } satisfies Record<ShutCause, Said>,
  shutUnsaved: {
    words: (shut: string) => `not all ink saved, ${shut}`,
    why: (why: string) =>
      `${why} What was drawn here last never reached the hub: the note on this page says what it is, and saves it as a file.`,
  },
  looksOnly: {
    view: {
      words: "view only",
      why: "This link shows the sheet as it is drawn. To draw, ask its owner for another link.",
    },
    critique: {
      words: "critique: looks, does not draw",
      why: "This link is for critique. To draw, ask the sheet's owner for another link.",
    },
  } satisfies Record<"view" | "critique", Said>,
  heard: {
    lost: "Careful:",
    back: "The line is back.",
    written: "The server writes again.",
  },
} as const;
