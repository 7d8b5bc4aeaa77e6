/** What is said between the link and the open sheet. */
export const door = {
  asking: "Opening the sheet…",
  closedTitle: "This browser has no way into the sheet",
  closedBody:
    "A sheet opens with a link that somebody on it has made. Ask whoever sent you here for one; a link that was revoked cannot be used again.",
  badLinkTitle: "This link opens nothing",
  badLinkBody:
    "It may have been cut short when it was copied, or it has been revoked. Ask whoever sent it for a new one.",
  unreachableTitle: "The server does not answer",
  unreachableBody: "Nothing is lost. The page tries again when you ask it to.",
  kept: {
    label: "What lies in this browser",
    words: (what: string) =>
      `In this browser lies what was drawn on the sheet and never reached the server: ${what}.`,
    where:
      "A link to the sheet that draws, opened in this browser, still brings it onto the sheet.",
    untitled: "walk",
  },
  again: "Try again",
  home: "To the start page",
  notFoundTitle: "There is nothing at this address",
  notFoundBody:
    "A sheet's address looks like /sheet/ and twelve letters, with the link's key behind it.",
  brokenTitle: "Something went wrong on this page",
  brokenBody: "Ink that was called saved is safe. Reload the page to go on.",
  reload: "Reload",
} as const;
