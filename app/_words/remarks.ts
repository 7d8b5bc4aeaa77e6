import type { Side } from "../../lib/body";
import type { CheckId, Level, PanelReadingId, Yardstick } from "../../lib/gait";

const plural = (count: number, one: string, many: string) => `${count} ${count === 1 ? one : many}`;

/** The margin and the signs on the panels. */
export const remarks = {
  heading: "Remarks",
  level: {
    shows: "will show",
    "may-show": "may show",
    tidy: "tidy",
  } satisfies Record<Level, string>,
  /** The count line: "2 will show · 1 may show". */
  counted: (count: number, level: Level) =>
    level === "tidy"
      ? plural(count, "detail to tidy", "details to tidy")
      : `${count} ${remarks.level[level]}`,
  toRedraw: (count: number) => `${count} to redraw`,
  kept: (count: number) => `${count} on purpose`,
  between: " · ",
  calm: {
    strip: "no panels yet",
    marks: "nothing marked yet",
    sound: "nothing stands out",
    open: "nothing so far",
    reading: "reading the sheet…",
    unread: "not read yet",
  },
  reading: "The sheet is being read. What a viewer will see is told here in a moment.",
  unread:
    "The part of the board that reads the walk could not be fetched, so nothing is known of it yet. Is the line down? What you draw is kept meanwhile. If it stays so, load the page again.",
  askAgain: "Try again",
  askingAgain: "Asking again…",
  emptyStrip: "Remarks appear here once the strip has panels and their joints are marked.",
  noMarks:
    "Mark the hips, knees, heels and toes on the drawings, and the board says here what a viewer will see.",
  noMarksLooking:
    "As soon as joints are marked on the drawings, the board says here what a viewer will see.",
  takeMarks: "Mark joints",
  sound: (yardstick: string) => `By the yardstick ${yardstick}, nothing in this walk stands out.`,
  soundSoFar: (yardstick: string) =>
    `By the yardstick ${yardstick}, nothing that can be read so far stands out.`,

  redrawFirst:
    "Nothing stands out in the figures, but some of the ink does not follow them yet: a viewer sees the ink.",

  frames: (first: number, last: number) => `${first} → ${last}`,
  framesHeard: (first: number, last: number) => `, from frame ${first} to ${last}`,
  group: (pose: string, side: string | null, frame: number | null) =>
    [side === null ? pose : `${pose}, ${side}`, ...(frame === null ? [] : [`frame ${frame}`])].join(
      " · ",
    ),
  noPanel: "The walk as a whole",
  /** "Foot slips, left and right". */
  bothSides: (title: string) => `${title.charAt(0).toUpperCase()}${title.slice(1)}, left and right`,
  places: (count: number) => plural(count, "place", "places"),
  place: (frames: string) => `frame ${frames}`,
  placeNamed: (title: string, first: number, last: number) =>
    `Show where: ${title}, ${first === last ? `frame ${first}` : `frames ${first} to ${last}`}`,
  show: "Show",
  showNamed: (title: string) => `Show where: ${title}`,
  whyThisNumber: "Why this number",
  measured: (value: string, expected: string, yardstick: string) =>
    `Measured ${value}, held against ${expected} by the yardstick ${yardstick}.`,
  ofALeg: (percent: string) => `${percent} % of a leg`,
  moreRemarks: (count: number) => plural(count, "more remark", "more remarks"),
  /** "Also read from this: hips sink twice; hips stand unevenly at the up". */
  alsoRead: (titles: readonly string[]) =>
    `Also read from this: ${[...new Set(titles.map((title) => title.charAt(0).toLowerCase() + title.slice(1)))].join("; ")}`,
  alsoSettled: (count: number) =>
    count === 1
      ? "The fix of the remark above settles it, too."
      : "The fix of the remark above settles them, too.",
  tidyFolded: (count: number) => plural(count, "detail to tidy", "details to tidy"),

  untold: (count: number) => plural(count, "question is still open", "questions are still open"),
  untoldLead: "The board does not guess. To answer, it needs:",
  untoldMore: (count: number) => plural(count, "more thing it needs", "more things it needs"),
  moreChecks: (count: number) => `${count} more`,
  check: {
    "missing-pose": "missing poses",
    "pose-order": "order of poses",
    "hip-order": "hip heights",
    "hip-range": "hip range",
    "weight-side": "weight from the side",
    "weight-front": "weight from the front",
    slide: "planted foot",
    float: "floating feet",
    sink: "sinking feet",
    "foot-roll": "roll of the foot",
    clearance: "toe clearance",
    "limb-length": "limb lengths",
    reach: "reach of the legs",
    knee: "bend of the knees",
    snap: "snapping knees",
    gaps: "timing",
    symmetry: "mirrored steps",
    loop: "closing of the loop",
    hitch: "hitches between poses",
    opposition: "arms against legs",
    tempo: "step length and pace",
    width: "step width",
    views: "side and front agree",
    sides: "left and right",
    "lead-in": "the lead-in",
  } satisfies Record<CheckId, string>,
  notJudged: "Not judged:",
  skipped: (count: number) =>
    `${plural(count, "stroke or mark", "strokes or marks")} on this sheet could not be read and ${
      count === 1 ? "is not shown; it is kept." : "are not shown; they are kept."
    }`,

  yardstick: {
    label: "Yardstick",
    name: {
      trade: "trade",
      life: "life",
      "this-walk": "this walk",
      version: "a version",
    } satisfies Record<Yardstick, string>,
    means: {
      trade:
        "How animators pose a walk: down lowest, up highest, poses evenly timed. The usual choice.",
      life: "How people walk: measured on 72 captured walks of 15 people. The rise is smaller, passing comes later.",
      "this-walk":
        "The walk's own step is the rule: the first that was approved, or the first complete one. Remarks say where the walk breaks it.",
      version: "Another walk is the rule: a version, another sheet or a captured walk.",
    } satisfies Record<Yardstick, string>,
  },

  readings: {
    heading: (frame: number) => `Readings · frame ${frame}`,
    headingNone: "Readings",
    pick: "Pick a panel to read it here.",
    unread: "Not read yet.",
    untold: (count: number) =>
      plural(count, "reading needs more marks", "readings need more marks"),
    none: (needs: string) => `Cannot tell yet: needs ${needs}.`,
    needs: (needs: string) => `needs ${needs}`,
    what: "reading",
    value: "value",
    yes: "yes",
    no: "no",
    name: {
      "hip-height": "hip height",
      "knee-bend": "knee bend",
      "foot-pitch": "foot pitch",
      "weight-foot-flat": "standing foot flat",
      "mass-height": "centre of mass",
      "mass-ahead": "mass ahead of ankle",
      "mass-beside": "mass inward of ankle, front",
      "base-length": "base, heel to toe",
      "base-width": "base, across",
      "toe-height": "swing toe height",
      "hip-bend": "hip bend",
      "ankle-bend": "ankle bend",
      "elbow-bend": "elbow bend",
      "trunk-lean": "trunk lean",
      "pelvis-tilt": "hip line, front",
      "shoulder-tilt": "shoulder line, front",
      "thigh-length": "thigh",
      "shank-length": "shank",
      "foot-length": "foot",
      "upper-arm-length": "upper arm",
      "forearm-length": "forearm",
      "neck-length": "neck",
    } satisfies Record<PanelReadingId, string>,
    more: "Angles and balance",
    lengths: "Lengths of the limbs",
    step: (side: Side | null) => (side === null ? "This step" : `This step · ${side}`),
    walk: "The walk",
    ofStep: {
      length: "length",
      width: "width",
      seconds: "time",
      speed: "speed",
      metresPerSecond: "speed in metres",
      cadence: "cadence",
      froude: "Froude number",
      doubleSupport: "both feet down",
      flight: "no foot down",
      hipRange: "hips' range",
      compassRise: "rise on stiff legs",
      hipShift: "hips toward the foot",
    },
    ofStride: {
      length: "stride",
      stance: "foot down, of the stride",
      swing: "foot up, of the stride",
      hipRange: "hips' range",
      hipSway: "hips' sway",
      time: "steps' times, index",
      lengths: "steps' lengths, index",
      lengthAngle: "steps' lengths, angle",
      stepToStep: "both steps alike",
      seam: "hips' speed across the seam",
      loopGap: "loop gap, worst joint",
      arc: {
        rise: (joint: string) => `${joint}'s arc, up and down`,
        sweep: (joint: string) => `${joint}'s arc, to and fro`,
      },
    },
    sided: (side: Side, name: string) => `${side} ${name}`,
    kneeBack: "the other way",
    toeUp: "toe up",
    toeDown: "toe down",
    toeEither: "toe up or down",
    legNote: (units: string) => `1 leg is ${units} panel units on this paper, hip joint to sole:`,
    legFrom: {
      stand: "measured on the stand.",
      panels: "the median of the marked poses.",
      heels: "the median of the marked poses, by their heels.",
    },
  },

  badge: (pose: string, frame: number, parts: string) =>
    `${parts} at ${pose}, frame ${frame}: open the remarks`,
  slips: (amount: string) => `slips ${amount}`,
  slidesBack: (amount: string) => `slides back ${amount}`,
  higherOrLower: (lower: boolean, amount: string) => `${lower ? "−" : "+"}${amount}`,

  method: {
    all: "How the readings are made",
    one: "How this is measured",
    newTab: " (opens in a new tab)",
  },

  helpLink: "These readings are for drawing, not for assessing anyone's gait.",
} as const;
