import { PICTURE_LIMITS } from "../../shared/limits";

const MIB = 1024 * 1024;
const mebibytes = (bytes: number) => `${(bytes / MIB).toFixed(1)} MiB`;
const millions = (pixels: number) => `${Math.round(pixels / 1e6)} million pixels`;

/** Reference pictures under the paper. */
export const reference = {
  row: "picture",
  name: "Picture under the paper",
  key: "I",
  noPanel: "Tap the panel that shall have it.",
  where: (frame: number, pose: string, view: string) => `Frame ${frame}, ${pose}, ${view} view`,
  choose: "Choose a picture",
  file: "Picture file",
  orElse: "Or drop one on the paper, or paste it. PNG, JPEG or WebP; everyone here sees it.",
  dim: "Dimmed",
  share: (share: number) => `${Math.round(100 * share)} %`,
  move: "Move it",
  moving: "Done",
  movingName: "Done moving it",
  fit: "Fit it in",
  all: "Under all panels",
  allHint: "under this view of every panel that has none",
  other: "Other…",
  otherName: "Other picture…",
  remove: "Remove",
  removeName: "Remove the picture",
  grip: "Picture under the paper: drag or arrow keys move it, plus and minus scale it, Enter when done",
  picture: "Picture under the paper",
  drop: "Put it under here",
  fetching: "Fetching the picture…",
  missed: "The picture did not come.",
  missedHint: "A picture did not come from the hub. The drawing is not touched by it.",
  again: "Try again",
  stop: "Stop",
  leaveIt: "Leave it",
  reading: "Making the picture ready…",
  sending: (share: number) => `Sending the picture, ${Math.round(100 * share)} %`,
  put: (frame: number, view: string) =>
    `Picture put under frame ${frame}, ${view}. Undo takes it back.`,
  putMany: (panels: number) =>
    `Put under ${panels} more ${panels === 1 ? "panel" : "panels"}. Undo takes it back.`,
  fitted: "Fitted into the view. Undo takes it back.",
  removed: "Picture removed. Undo brings it back.",
  stopped: "Stopped. Nothing was put under the paper.",
  failed: (name: string, why: string) =>
    `${name === "" ? "The picture" : name} was not put under the paper: ${why} Nothing else was changed.`,
  why: {
    kind: "it needs to be a PNG, JPEG or WebP picture, and this file is none.",
    broken: "this browser cannot open it. It may have been cut short.",
    tooLarge: (bytes: number) =>
      `a picture file may have ${mebibytes(PICTURE_LIMITS.fileBytes)}, and this one has ${mebibytes(bytes)}.`,
    tooMany: (pixels: number) =>
      `a picture may have ${millions(PICTURE_LIMITS.filePixels)}, and this one has ${millions(pixels)}.`,
    tooFine: `even made small it has more than ${mebibytes(PICTURE_LIMITS.bytes)}.`,
    unreachable: "the hub does not answer. The file is kept here: try again when the line is back.",
    refused: (message: string) => `the hub says: ${message}.`,
    noPaper: "it needs a paper to lie under. Drop it on one.",
    noPanel: "it needs a panel to lie under. Tap one, then paste again.",
    noFile: "what was dropped is no file. Save the picture first, then drop the file.",
    tooFew: (left: number) =>
      `the strip has no panel for ${left === 1 ? "it" : `${left} of them`}. The others are in place.`,
    unknown: "something unforeseen went wrong.",
  },
} as const;
