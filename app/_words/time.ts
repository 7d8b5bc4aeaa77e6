/** The strip's times: evening out, another tempo, ones and twos, the loop. */
export const time = {
  group: "Time",
  evenOut: "Even out",
  evenOutHint: "Poses to the nearest even frames; the contacts stay",
  retime: "Retime",
  retimeHint: "Another number of frames a step; every pose keeps its share",
  exposureHint: "On ones every frame is drawn, on twos every second: 1, 3, 5",
  what: "What",
  wholeStrip: "whole strip",
  step: (side: string, from: number, to: number) =>
    side === "" ? `step ${from} → ${to}` : `${side} step ${from} → ${to}`,
  left: "left",
  right: "right",
  frames: "frames",
  framesOfStep: (side: string) => `Frames of a ${side} step`,
  framesOfThisStep: "Frames of this step",
  nothing: { "even-out": "It is even: nothing moves.", retime: "That is how it stands." },
  atLeast: (least: number) => `At least ${least}: each pose needs a frame of its own.`,
  atMost: (most: number) => `A whole number of frames, up to ${most}.`,
  moves: (moves: readonly string[], more: number) =>
    `Moves ${moves.join(", ")}${more > 0 ? ` and ${more} more` : ""}.`,
  move: (from: number, to: number) => `${from} → ${to}`,
  contacts: (frames: readonly number[]) => `Contacts ${frames.join(" · ")}.`,
  loop: (from: number, to: number) => `Loop ${from} to ${to}.`,
  reads: (reads: string) => `Reads ${reads}.`,
  loopEnd: { from: "Loop begins", to: "Loop ends" },
  cancel: "Leave it",
} as const;
