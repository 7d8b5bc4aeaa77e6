/** Handing the sheet over: print, and the sheet's own file. */
export const handover = {
  title: "Print the sheet",
  preview: "Preview of the annotated sheet",
  drawing: "Laying out the sheet…",
  format: "As",
  formats: {
    "png-1920": { name: "PNG, 1920 wide", hint: "a picture for mail, chat and screens" },
    "png-3840": { name: "PNG, 3840 wide", hint: "a picture for paper and large screens" },
    svg: { name: "SVG", hint: "lines and text, sharp at any size" },
  },
  download: "Download",
  stop: "Stop",
  making: {
    layout: "Laying out the sheet…",
    fonts: "Fetching the typeface…",
    picture: "Drawing the picture…",
    file: "Writing the file…",
  },
  done: (name: string) => `Saved as ${name}, in this browser's downloads.`,
  stopped: "Stopped. Nothing was saved.",
  noPreview: (why: string) => `The preview could not be drawn: ${why}`,
  failed: (why: string) => `No file was made: ${why} The sheet itself is untouched.`,
  why: {
    library: "the part of the board that prints could not be fetched. Is the line down?",
    font: "the typeface could not be fetched. Is the line down?",
    picture: "this browser could not draw the picture. A smaller one, or SVG, may work.",
    size: "the picture is larger than this browser can draw. A smaller one, or SVG, may work.",
    unknown: "something unforeseen went wrong.",
  },
  exportFile: "Download the sheet file",
  exportHint:
    "Everything on the sheet as one JSON file: for the command line, or to start a sheet from.",
  leftOut: {
    print: (pictures: number) =>
      `${pictures === 1 ? "The picture" : `The ${pictures} pictures`} under the paper: not printed.`,
    file: (pictures: number) =>
      `${pictures === 1 ? "The picture" : `The ${pictures} pictures`} under the paper: not in the file.`,
  },
  untitled: "walk",
} as const;
