/** What became of work that the sheet did not take as it was. It must be at hand when the line is down. */
export const told = {
  /** A file of a sheet without a name. */
  untitled: "walk",
  label: "What became of your work",
  putBack: "This sheet was put back to an earlier state by whoever runs the server.",
  doneAgain: (what: string) =>
    `The sheet was opened afresh. What was not saved yet was done again on it: ${what}.`,
  lost: (what: string) => `This could not be kept on the sheet: ${what}.`,
  why: {
    role: "Your link no longer lets you change it.",
    full: "The sheet has reached the largest size that a sheet may have.",
    size: "It is larger than one change may be.",
    content: "The server does not know what it is.",
    damaged: "The server could not read it.",
    resync: "The server could not fit it into the sheet.",
    owner: "Another browser goes on under the same name for this page.",
    "panel-missing": "The panel that it belongs to is not on the sheet any more.",
    unreadable: "It cannot be read any more.",
    shut: "The server did not have it yet when the door was shut. Another link to the sheet that draws, opened in this browser, still brings it onto the sheet.",
  },
  otherwise: "The server did not take it.",
  where: "It lies in this browser until you save it or throw it away.",
  save: "Save it as a sheet file",
  saved: (name: string) => `Saved as ${name}, in this browser's downloads.`,
  file: (title: string) => `${title}, not taken`,
  forget: "Throw it away",
  forgetAsk: "What is not in a file is gone then.",
  forgetYes: "Throw it away for good",
  forgetNo: "Keep it",
  close: "Close this note",
  strokes: (count: number) => (count === 1 ? "1 stroke" : `${count} strokes`),
  marks: (count: number) => (count === 1 ? "1 mark" : `${count} marks`),
  entries: (count: number) =>
    count === 1 ? "1 entry of the critique" : `${count} entries of the critique`,
  others: (count: number) => (count === 1 ? "1 other change" : `${count} other changes`),
} as const;
