import type { Side } from "../../lib/body";
import type { CheckId, Level, PanelReadingId, Yardstick } from "../../lib/gait";

const plural = (count: number, one: string, many: string) => `${count} ${count === 1 ? one : many}`;

/** The margin, the signs on the panels, and the help page. */
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
  },
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

  help: {
    link: "These readings are for drawing, not for assessing anyone's gait.",
    open: "Help",
    title: "Help",
    note: {
      heading: "What the readings are",
      words:
        "The board measures marks on drawings so that a drawn walk can be judged as a drawing. Its readings and remarks are not a medical assessment of anybody's gait and must not be used as one. They say what a viewer will see; what the walk should be is yours to decide.",
    },
    words: {
      heading: "Words of the board",
      list: [
        ["strip", "the panels in frame order, each hung by a stem from the ruler"],
        ["panel", "one pose at one frame, with a side view and a front view"],
        ["ruler", "the line of frames; moving a stem's foot along it changes the frame"],
        ["mark", "a joint's point on a drawing; left marks are round, right ones are diamonds"],
        ["stand", "the neutral pose that the build is measured from"],
        ["weight on", "the side that carries, or at contact receives, the weight"],
        ["footprint", "where a planted foot was put down"],
        ["leg", "a leg length, hip joint to sole: what distances are told in, whatever the build"],
        ["reading", "a measured value; ± says how far the marks' precision leaves it open"],
        ["remark", "a reading outside what the yardstick expects"],
        ["fix", "what would settle a remark: shown first, then done or left"],
        ["on purpose", "a remark the team keeps, in one panel, on one side or in the whole walk"],
        ["drawing desk", "one panel filling the window for drawing"],
      ] as readonly (readonly [string, string])[],
    },
    signs: {
      heading: "Signs",
      shows: "will show: a viewer will see it",
      "may-show": "may show: some will see it",
      tidy: "tidy: nobody will see it; folded away",
    },
    yardsticks: { heading: "Yardsticks" },
    keys: { heading: "Keys", key: "key", does: "what it does" },
  },
} as const;
