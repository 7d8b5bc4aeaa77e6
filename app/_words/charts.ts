/** The hip line and the gaps under the ruler. */
export const charts = {
  reading: "Reading the sheet…",
  unread: "Not read yet: see Remarks.",

  hips: "hips",
  hipsTitle: "Hip height by frame, in leg lengths",
  hipsEmpty: "Mark the hips to see their height here.",
  hipsSummary: (marked: number, all: number, low: string, high: string) =>
    `${marked} of ${all} panels have their hips marked; they stand between ${low} and ${high} leg.`,
  hipsBand: (yardstick: string) => `The shaded band is what the yardstick ${yardstick} expects.`,
  point: (pose: string, frame: number, height: string, remarked: boolean) =>
    `${pose}, frame ${frame}: hips at ${height}${remarked ? ", remarked on" : ""}`,
  remarked: "remarked on",

  footfalls: "feet",
  footfallsTitle: "Footfalls: which foot is down when, and how",
  footfallsEmpty: "Two panels make the first footfall.",
  footState: {
    heel: "on its heel",
    flat: "flat",
    ball: "on its ball",
    toe: "on its toe",
    air: "in the air",
  },
  footUntold: (needs: string) => `cannot tell: needs ${needs}`,
  footfall: (side: string, from: string, to: string, told: string) =>
    `${side} foot, frames ${from} to ${to}: ${told}`,
  footSummary: (side: string, down: string, known: string) =>
    known === "0"
      ? `The ${side} foot cannot be told.`
      : `The ${side} foot is down for ${down} of ${known} frames.`,
  bothSummary: (both: string, neither: string, known: string) =>
    `Both are down for ${both}, neither for ${neither}, of ${known} frames.`,
  asTable: (name: string) => `${name}: read as a table`,

  gaps: "gaps",
  gapsTitle: "Frames between neighbouring panels",
  gapsEmpty: "Two panels make the first gap.",
  gapsSummary: (gaps: string, uneven: number) =>
    uneven === 0 ? `In order: ${gaps}.` : `In order: ${gaps}. ${uneven} remarked on.`,
  expected: (frames: number) => `(${frames})`,

  table: {
    panel: "panel",
    frame: "frame",
    height: "hip height",
    expected: "expected",
    none: "hips not marked",
    from: "from frame",
    to: "to frame",
    frames: "frames",
    foot: "foot",
    state: "on the ground",
    between: (low: string, high: string) => `${low} to ${high} leg`,
    above: (low: string) => `above ${low} leg`,
    below: (high: string) => `below ${high} leg`,
    nothing: "nothing in particular",
  },
} as const;
