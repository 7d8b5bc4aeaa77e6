import type { JointName, Side } from "../../body";
import { rootSumSquare, type View } from "../../geometry";
import { STEP_POSES, type StepPose } from "../../motion";
import { clearlyBeyond, greatestOf } from "../beyond";
import type { Reading, Remark, Subject } from "../finding";
import { evenWithin, PAIRS_SOURCE } from "../methods/symmetry";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";
import { capital, degrees, percent, sided } from "../words";
import { cannotTell, sound } from "./answers";
import type { Stride } from "./strides";
import type { Part } from "./symmetry-part";

/** What is read on a pose, of the foot that carries or of the one that swings. */
export interface PairReading {
  readonly reading: Reading;
  readonly view: View;
  readonly joints: readonly JointName[];
}

/** Something that a pose has and its mirrored partner has, too. */
export interface PosePair {
  /** "the hips stand over the ground by". */
  readonly what: string;
  readonly title: string;
  readonly subject: Subject;
  readonly poses: readonly StepPose[];
  /** The most that captured pairs differ by at the pose. */
  most(pose: StepPose): number;
  read(study: Study, panel: WalkPanel, weightOn: Side): PairReading | null;
}

/** Pairs that are read together, and what is needed where none of them can be. */
export interface PosePairs {
  readonly needs: string;
  /** All of them on one pose. Known by itself: of a stride whose one pose was changed, only that is read again. */
  apart(study: Study, panel: WalkPanel, other: WalkPanel, ...of: Mirrored): readonly Apart[];
}

/** Which pose two mirrored panels show, and whose weight each of them carries. */
type Mirrored = readonly [pose: StepPose, one: Side, two: Side];

export function posePairs(pairs: readonly PosePair[], needs: string): PosePairs {
  return {
    needs,
    apart(study, panel, other, ...of) {
      const asked = pairs.filter(({ poses }) => poses.includes(of[0]));
      return asked
        .map((pair) => apartBy(study, pair, [panel, other], of))
        .filter((apart) => apart !== null);
    },
  };
}

function apartBy(
  study: Study,
  pair: PosePair,
  panels: Apart["panels"],
  [pose, one, two]: Mirrored,
): Apart | null {
  const here = pair.read(study, panels[0], one);
  const there = pair.read(study, panels[1], two);
  if (here === null || there === null) return null;
  const value = Math.abs(here.reading.value - there.reading.value);
  const plusMinus = rootSumSquare(here.reading.plusMinus, there.reading.plusMinus);
  if (!Number.isFinite(value + plusMinus)) return null;
  const apart = { value, plusMinus, unit: here.reading.unit };
  return { pair, pose, panels, read: [here, there], apart, most: pair.most(pose) };
}

interface Apart {
  readonly pair: PosePair;
  readonly pose: StepPose;
  readonly panels: readonly [WalkPanel, WalkPanel];
  readonly read: readonly [PairReading, PairReading];
  readonly apart: Reading;
  readonly most: number;
}

/** The poses of one step against the mirrored poses of the other; the pair farthest beyond its like counts. */
export function posePart(study: Study, { first, second }: Stride, asked: PosePairs): Part {
  const { weightOn: one } = first;
  const { weightOn: two } = second;
  const about = { check: "symmetry", side: two, panels: [] } as const;
  if (one === null || two === null) {
    const open = cannotTell(about, "to know whose weight each step carries");
    return { remark: null, open, sound: null };
  }
  const both: WalkPanel[] = [];
  const read: Apart[] = [];
  for (const pose of STEP_POSES) {
    const [a, b] = [first[pose], second[pose]];
    if (a === null || b === null) continue;
    both.push(a, b);
    read.push(...study.once(a, asked.apart, b, pose, one, two));
  }
  const worst = greatestOf(read, share);
  if (worst === undefined) {
    const open = cannotTell({ ...about, panels: both }, asked.needs);
    return { remark: null, open, sound: null };
  }
  const even = sound({ ...about, panels: worst.panels }, worst.apart);
  return { remark: remarkOn(study, worst, two), open: null, sound: even };
}

/** How far apart, net of the marks' ±, as a multiple of the most that captured pairs are. */
function share({ apart, most }: Apart): number {
  return (apart.value - apart.plusMinus) / most;
}

function remarkOn({ yardstick }: Study, worst: Apart, side: Side): Remark | null {
  const { pair, pose, panels, read, apart, most } = worst;
  const broken = evenWithin(most).find(({ value }) =>
    clearlyBeyond(apart.value, apart.plusMinus, value),
  );
  if (broken === undefined) return null;
  const [here, there] = read.map(({ reading }) => inWords(reading));
  const [one, two] = panels;
  return {
    kind: "remark",
    check: "symmetry",
    level: broken.level,
    yardstick,
    subject: pair.subject,
    side,
    panels: panels.map(({ id }) => id),
    frames: panels.map(({ frame }) => frame),
    spots: panels.map(({ id }, nth) => ({
      panel: id,
      view: read[nth]?.view ?? "side",
      joints: read[nth]?.joints ?? [],
    })),
    measured: apart,
    expected: { value: broken.value, plusMinus: 0, unit: apart.unit },
    title: capital(`${pair.title} at ${pose === "passing" ? "" : "the "}${pose}`),
    why: `At the ${sided(one.weightOn, pose)}, frame ${one.frame}, ${pair.what} ${here}; at the ${sided(two.weightOn, pose)}, frame ${two.frame}, ${there}. They are ${inWords(apart)} apart, and up to ${inWords({ value: broken.value, plusMinus: 0, unit: apart.unit })} passes as even. The two steps ${broken.level === "tidy" ? "are a little" : "may look"} unlike.`,
    source: PAIRS_SOURCE,
    beyond: (apart.value - broken.value) / broken.value,
  };
}

function inWords(reading: Reading): string {
  const sign = reading.value < 0 ? "−" : "";
  if (reading.unit === "rad") return `${sign}${degrees(reading)}`;
  return `${sign}${percent(reading)} of a leg`;
}
