/** Handing the sheet over: print, and the sheet's own file. */
export const handover = {
  title: "Print the sheet",
  preview: (page: number, pages: number) =>
    pages === 1
      ? "Preview of the annotated sheet"
      : `Preview of the annotated sheet, page ${page} of ${pages}`,
  drawing: "Laying out the sheet…",
  page: "On",
  papers: {
    a4: "A4, 210 × 297 mm",
    a3: "A3, 297 × 420 mm",
    letter: "Letter, 8.5 × 11 in",
    tabloid: "Tabloid, 11 × 17 in",
  },
  onePage: "One picture, as high as it must be",
  orientation: "Which way round",
  orientations: { landscape: "landscape", portrait: "portrait" },
  pages: "Pages",
  before: "Page before",
  after: "Page after",
  pageOf: (page: number, pages: number) => `page ${page} of ${pages}`,
  format: "As",
  formats: {
    "png-1920": { name: "PNG, 1920 wide", hint: "a picture for mail, chat and screens" },
    "png-3840": { name: "PNG, 3840 wide", hint: "a picture for paper and large screens" },
    svg: { name: "SVG", hint: "lines and text, sharp at any size" },
  },
  download: "Download",
  downloadAll: (pages: number) => `Download ${pages} pages`,
  downloadOnly: (page: number) => `Page ${page} only`,
  stop: "Stop",
  progress: "How far the print is",
  making: {
    layout: "Laying out the sheet…",
    fonts: "Fetching the typeface…",
    page: (page: number, pages: number) => `Drawing page ${page} of ${pages}…`,
    picture: (page: number, pages: number) => `Making the picture of page ${page} of ${pages}…`,
  },
  done: (names: readonly string[]) => `Saved as ${names.join(", ")}, in this browser's downloads.`,
  stopped: (names: readonly string[]) =>
    names.length === 0
      ? "Stopped. Nothing was saved."
      : `Stopped. ${names.join(", ")} was saved before.`,
  again: "Try again",
  noPreview: (why: string) => `The preview could not be drawn: ${why}`,
  failed: (why: string) => `No file was made: ${why} The sheet itself is untouched.`,
  why: {
    library: "the part of the board that prints could not be fetched. Is the line down?",
    reader: "the part of the board that reads the walk could not be fetched. Is the line down?",
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
} as const;
