/** Fixes that are shown before they are done, and drawings that are to redraw. */
export const fixes = {
  fix: "Fix…",
  fixNamed: (title: string) => `Show a fix: ${title}`,
  none: "No fix is known: this one is drawn, not moved.",
  shown: "A fix, shown before it is done",
  doIt: "Do it",
  leaveIt: "Leave it",
  fresh: "new",
  moves: (frame: number) => `Shown dashed on frame ${frame}.`,
  exchanges: (frame: number) =>
    `On frame ${frame} left marks become right and right left; the drawing stays as it is.`,
  slides: (from: number, to: number) => `Frame ${from} goes to ${to}.`,
  relabels: (frame: number, pose: string, side: string | null) =>
    `Frame ${frame} becomes ${side === null ? pose : `${pose}, weight on ${side}`}.`,
  advances: (legs: number) =>
    `The ground goes by at ${legs.toFixed(3)} of a leg a frame; no drawing is touched.`,
  adds: (pose: string, frame: number) => `A new ${pose} at frame ${frame}, to be drawn.`,
  willRedraw: (frames: readonly number[]) =>
    `The ink stays: ${frames.length === 1 ? `frame ${frames[0]}` : `frames ${frames.join(", ")}`} will be to redraw.`,
  done: (title: string) => `${title}: done. Undo takes it back.`,

  toRedraw: "to redraw",
  redrawHeading: (count: number) => `${count} ${count === 1 ? "drawing" : "drawings"} to redraw`,
  redrawWhy: "The new figure lies over the old ink. Numbers speak of the figure, not of the ink.",
  redrawEnds: "Drawing there ends it; so does this, where the ink will do as it is:",
  redrawDone: "Done",
  redrawDoneNamed: (pose: string, frame: number, view: string) =>
    `Done: the ${view} view of ${pose}, frame ${frame}, needs no redrawing`,
  redrawSaid: (frame: number) => `Frame ${frame}: nothing to redraw there. Undo takes it back.`,
  redrawShow: "Show",
  redrawShowNamed: (pose: string, frame: number) => `Show ${pose}, frame ${frame}`,
  redrawBadge: (pose: string, frame: number, views: string) =>
    `${pose}, frame ${frame}: ${views} to redraw; open the list`,
  paper: (pose: string, side: string | null, frame: number) =>
    `${side === null ? pose : `${pose}, ${side}`} · frame ${frame}`,
  and: " and ",
} as const;
