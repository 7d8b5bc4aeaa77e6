import type { Tool } from "../_workspace";

/** The board itself: head band, tray, strip, ruler, drawing desk. */
export const strip = {
  opening: "Fetching the sheet…",
  theme: { system: "Light: as the system", day: "Light: day", dim: "Light: dim" },
  head: {
    sheet: "This sheet",
    about: "About this sheet",
    invite: "Invite",
    print: "Print the sheet",
    printShort: "Print",
    help: "Help",
    remarks: "Remarks",
    reading: "…",
    unread: "?",
    tempo: (told: {
      readonly fps: number;
      readonly frames: string;
      readonly step: string;
      readonly speed: string | null;
      readonly reads: string;
    }) =>
      [
        `${told.fps} fps`,
        `${told.frames} frames a step`,
        `step ${told.step} leg`,
        ...(told.speed === null ? [] : [`${told.speed} m/s`]),
        `reads ${told.reads}`,
      ].join(" · "),
    uneven: (left: number, right: number) => `${left} left, ${right} right`,
    firstFrame: "Frame 1 in the shot",
    firstFrameHint:
      "the number that the shot gives to the sheet's first frame; the ruler shows both",
    start: "To the start page",
    keep: "Keep these changes",
  },
  /** A page over the board that is on its way. */
  page: {
    print: "Print the sheet",
    invite: "Invite",
    help: "Help",
    sheet: "About this sheet",
    fetching: "Fetching it…",
    unfetched: "This page could not be fetched. Is the line down? What you draw is kept meanwhile.",
    again: "Try again",
  },
  tray: {
    name: "Tray",
    inHand: "In the hand",
    tools: {
      draw: "Draw",
      "rub-out": "Rub out",
      mark: "Mark joints",
      gather: "Gather",
      paper: "Move paper",
    } satisfies Record<Tool, string>,
    rubPart: "only where it touches",
    pencils: "Pencils",
    nibs: { fine: "fine pencil", broad: "broad pencil", under: "soft blue, under the drawing" },
    under: "Under the paper",
    onion: (before: number, after: number) => `${before} before, ${after} after`,
    onionHint: "Panels seen through the paper",
    marksShown: "marks shown",
    undo: "Undo",
    redo: "Redo",
    panel: "Panel in hand",
    noPanel: "Tap a panel's name to take it in hand.",
    pose: "Pose",
    weightOn: "Weight",
    nobody: "not said",
    frame: "Frame",
    hold: "Hold",
    holdHint: "frames the pose is kept beyond its exposure; play and the ruler keep it",
    place: "Place, legs",
    placeHint: "where the panel's middle stands on the ground; empty follows the advance",
    placeSolvedHint:
      "where the panel's middle stands on the ground; empty is solved from the planted feet",
    placeSolved: (legs: string, plusMinus: string) =>
      `Solved from the planted feet: ${legs} ± ${plusMinus} legs`,
    placeGoesOn: (legs: string) =>
      `No planted foot is marked here: ${legs} legs, on from the panel before`,
    desk: "Draw it large",
    add: "Add one after",
    remove: "Remove it",
    viewOnly: "You are here to look: this link does not draw.",
    stopped: "Nothing drawn here would be saved any more: the line at the top says why.",
  },
  rows: { side: "side", front: "front" },
  /** Where a panel stands, in leg lengths, on a sheet whose places are solved. */
  placeTold: {
    solved: (legs: string) => `stands at ${legs} legs, solved from the planted feet`,
    set: (legs: string) => `stands at ${legs} legs, set by hand`,
    travel: (legs: string) => `stands at ${legs} legs, on from the panel before`,
  },
  stage: "Strip",
  empty: "The strip is empty.",
  emptyAdd: "Add the first panel",
  papers: {
    name: (pose: string, frame: number, view: string) => `${pose}, frame ${frame}, ${view} view`,
  },
  panelName: (pose: string, side: string, frame: number) =>
    side === "" ? `frame ${frame}, ${pose}` : `frame ${frame}, ${pose}, weight on ${side}`,
  /** What a screen reader hears of a panel beyond its name, joined by `told.between`. */
  told: {
    between: ", ",
    hips: (legs: string) => `hips ${legs} of a leg`,
    remarks: (count: number) => `${count} ${count === 1 ? "remark" : "remarks"}`,
    kept: (count: number) => `${count} kept on purpose`,
    toRedraw: "to redraw",
    ink: (strokes: number) =>
      strokes === 0 ? "no ink" : `${strokes} ${strokes === 1 ? "stroke" : "strokes"}`,
    joints: (joints: number) =>
      joints === 0 ? "no joints marked" : `${joints} ${joints === 1 ? "joint" : "joints"} marked`,
  },
  /** What a screen reader is told as it happens. */
  said: {
    removed: "Panel removed. Undo brings it back.",
    undone: "Undone.",
    redone: "Done again.",
    reading: "Reading the sheet.",
    read: (count: number) =>
      count === 0
        ? "The sheet is read."
        : `The sheet is read: ${count} ${count === 1 ? "remark" : "remarks"}.`,
    unread: "The sheet could not be read. The margin says why, and has a way to ask again.",
    appeared: (title: string) => `Remark: ${title}.`,
    appearedMany: (count: number) => `${count} more remarks.`,
    gone: (title: string) => `Settled: ${title}.`,
    goneMany: (count: number) => `${count} remarks settled.`,
    left: (count: number) =>
      count === 0 ? "None is left." : `${count} ${count === 1 ? "remark" : "remarks"} in all.`,
  },
  ruler: "Ruler",
  margin: "Margin",
  shot: "shot",
  inShot: (told: string, shot: number) => `${told}; ${shot} in the shot`,
  held: (frame: number, hold: number) => `frame ${frame}, held for ${hold} more`,
  stem: (pose: string, side: string) =>
    `Frame of ${pose}${side === "" ? "" : ` ${side}`}: arrow keys move it`,
  zoom: {
    in: "Closer",
    out: "Further",
    fit: "Whole strip",
    level: (share: number) => `${share} %`,
  },
  desk: {
    name: "Drawing desk",
    open: "the panel in hand to the drawing desk; while marking: take the guess",
    back: "To the strip",
    before: "Panel before",
    after: "Panel after",
    ribbon: "Strip",
  },
  signs: {
    kept: "on purpose: a remark that the team keeps, with its reason or without",
    toRedraw: "to redraw: marks were moved, and the ink does not follow them yet",
  },
} as const;
