import type { CheckId, Level, WalkKind } from "../../lib/gait";

/** The page that says how each reading is made. What a check measures, its library says itself. */
export const methods = {
  title: "How the readings are made",
  home: "Heelstrip",
  lead: "What the board measures on a drawn walk, by which numbers it remarks, and where those numbers come from. The checks take their limits from the same lines as this page.",
  contents: "On this page",
  checks: "The checks",
  about: {
    what: {
      heading: "What the readings are",
      words: [
        "A reading is a distance, an angle, a height or a time, measured on the marks of a drawing. A check holds readings against a limit and has three answers: nothing to say, a remark, or that it cannot tell yet and what it needs for it. What is not marked is never guessed.",
        "A remark says what a viewer will see. It never says that a choice is wrong: any remark can be kept on purpose, in one panel, on one side or in the whole walk.",
        "The readings are for drawing. They are no medical assessment of anyone's gait and must not be used as one.",
      ],
    },
    sure: {
      heading: "How sure they are",
      words: [
        "Every mark carries how exactly it was placed: two screen pixels at the zoom of the moment, at least 0.5 % and at most 3 % of a leg. A reading made of several marks carries the root of the sum of their squares, written after ±.",
        "A remark appears only when the reading lies beyond its limit by more than its own ±. A coarse mark makes the board quieter, never louder.",
      ],
      formula: [
        "± of a reading = √( ±a² + ±b² + … ), a, b, … the marks it is made of",
        "remarked when reading − ± > limit",
      ],
    },
    sizes: {
      heading: "Sizes",
      words: [
        "Distances are told in leg lengths, hip joint to sole, so that they hold for any build: 5 % of a leg is 4.5 cm on an adult and less on a mouse. The leg is measured on the stand; without a stand it is the median over the marked poses, thigh and shank times 1.079 for the height of the ankle.",
        "On the ground x runs the way the walker goes, y up from the ground line, z across. In a walk on the spot the ground slides back by the advance of each frame; in a travelling walk each panel has its place. Both become the same ground, so that one rule judges both. Times are in frames of the sheet.",
      ],
    },
    yardsticks: {
      heading: "Yardsticks",
      words:
        "Animators do not copy life, so a remark says by which yardstick it speaks. A limit that follows from mechanics, such as a foot going through the floor, is the same by each.",
    },
    levels: {
      heading: "Levels",
      list: {
        shows: "A viewer will see it.",
        "may-show": "Some will see it.",
        tidy: "Nobody will see it; folded away in the margin.",
      } satisfies Record<Level, string>,
    },
    from: {
      heading: "Where the numbers come from",
      words: [
        "The figures of life were counted on 72 captured walks of 15 people, 317 steps and 245 strides, by an analysis that shares no code with the board. Beside each limit stands how many of those steps, pairs or strides it would remark. None of 317 means below about 1 %; and since only 15 people were seen, there may be one person in five who walks otherwise.",
        "A limit that comes from a paper or a handbook names it. Where there is none, the line says so.",
      ],
      credit:
        "The data used in this project was obtained from mocap.cs.cmu.edu. The database was created with funding from NSF EIA-0196217.",
    },
  },
  section: {
    measures: "What is measured",
    formula: "Reckoned as",
    limits: "Limits",
    life: "What people do",
    kinds: "Kinds of walk",
    kindsNone: "Asked of every kind of walk.",
    fix: "Fix",
    sources: "Sources",
    top: "Back to the top",
  },
  table: {
    caption: (check: string) => `Limits: ${check}`,
    what: "what",
    by: "yardstick",
    remarked: "remarked",
    trips: "captured steps that trip it",
    source: "source",
    everyYardstick: "each",
    above: (value: string) => `above ${value}`,
    below: (value: string) => `below ${value}`,
    outside: (from: string, to: string) => `outside ${from} to ${to}`,
    beyondEither: (value: string) => `beyond ± ${value}`,
    none: "none",
    uncounted: "not counted",
  },
  unit: {
    ofALeg: (percent: string) => `${percent} % of a leg`,
    ofALegAFrame: (percent: string) => `${percent} % of a leg a frame`,
    aFrame: (angle: string) => `${angle} a frame`,
    frames: (count: string) => `${count} ${count === "1" ? "frame" : "frames"}`,
    poses: (count: string) => `${count} ${count === "1" ? "pose" : "poses"}`,
    times: (count: string) => `${count} ${count === "1" ? "time" : "times"}`,
  },
  kind: {
    plain: "plain",
    heavy: "heavy",
    limp: "limp",
    sneak: "sneak",
    child: "child",
    "double-bounce": "double bounce",
    march: "march",
    free: "free",
  } satisfies Record<WalkKind, string>,
  /** "limp: judged in part, since a limp takes its two steps in different times". */
  quieted: (kind: string, partly: boolean, why: string) =>
    `${kind}: ${partly ? "judged in part" : "not judged"}, since ${why}`,
  /** What a fix does; null where there is none. */
  fix: {
    "missing-pose":
      "The panel is put in at its even frame, an in-between of its neighbours as its ghost.",
    "pose-order":
      "The panel takes the label that its drawing has, two labels change places, or the weight goes to the step's side.",
    "hip-order":
      "The body is raised or lowered into the allowed span; feet stay, knees are solved.",
    "hip-range":
      "The poses at the top are lowered or those at the bottom raised; hips that stay level get their down and up apart. Feet stay, knees are solved.",
    "weight-side": "The body is shifted over what it stands on; feet stay, knees are solved.",
    "weight-front": "The body is shifted toward the foot that carries; feet stay.",
    slide: "The foot goes onto its footprint.",
    float: "The foot is set down on the ground.",
    sink: "The foot is lifted onto the ground.",
    "foot-roll": null,
    clearance:
      "The swinging foot is raised or lowered to where people carry it, or just within the limit; the knee is solved.",
    "limb-length":
      "Knee or elbow goes to where both bones have the figure's own lengths; hip and ankle, shoulder and wrist stay. Where a leg does not reach so, the body or the foot comes nearer.",
    reach:
      "The body comes down until the leg reaches its foot, or the foot comes closer; a swinging foot first.",
    knee: "The knee goes to the other side of the line from hip to ankle; both bones keep their lengths.",
    snap: null,
    gaps: "The nearest even layout, shown before it is done.",
    symmetry:
      "One pose is drawn from the same pose of the other step, mirrored onto its own footprint. Two lengths are for the artist to even out.",
    loop: "The first pose is copied onto the last, brought to where the last has its hips where the walk travels.",
    hitch: null,
    opposition: null,
    tempo:
      "The advance, or the panels' places, take the length of the steps as drawn; a step's own length is drawn, not moved.",
    width: "The foot that ends the step is shifted sideways in the front view.",
    views: "The front view takes its heights from the side view.",
    sides:
      "Left and right change places in the panel where that helps, with the arms where they changed places, too.",
    "lead-in":
      "A foot that moved since the stand goes back onto its footprint; a body that stayed back goes over the foot that stands, knees solved; a lead-in inside the loop is called a breakdown.",
  } satisfies Record<CheckId, string | null>,
  fixNone: "None: what to do about it is drawn, not reckoned.",
} as const;
