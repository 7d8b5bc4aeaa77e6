import type { JointName } from "../../body";
import { rootSumSquare } from "../../geometry";
import { clearlyBeyond } from "../beyond";
import type { Reading } from "../finding";
import { LENGTH_LIMITS, LENGTH_SOURCE } from "../methods/symmetry";
import { stepLength } from "../readings/between-feet";
import type { Study } from "../study";
import { symmetryIndex } from "../symmetry-index";
import { capital, percent } from "../words";
import { cannotTell, sound } from "./answers";
import { whoseStep } from "./step-words";
import type { Stride } from "./strides";
import type { Part } from "./symmetry-part";

const FEET: readonly JointName[] = ["left-ankle", "right-ankle"];

/** Are the two steps of a stride equally long? By the symmetry index of their lengths. */
export function lengthPart(study: Study, { first, second }: Stride): Part {
  const panels = [first.contact, second.contact, second.next].filter((panel) => panel !== null);
  const about = { check: "symmetry", side: second.weightOn, panels } as const;
  const [one, two] = [stepLength(study, first), stepLength(study, second)];
  const needs =
    one.kind === "cannot-tell" ? one.needs : two.kind === "cannot-tell" ? two.needs : null;
  if (one.kind === "cannot-tell" || two.kind === "cannot-tell") {
    return { remark: null, open: cannotTell(about, needs ?? NEEDS), sound: null };
  }
  if (!(one.value > 0 && two.value > 0)) {
    return { remark: null, open: cannotTell(about, NEEDS), sound: null };
  }
  const index = symmetryIndex(one.value, two.value);
  const plusMinus = rootSumSquare(one.plusMinus, two.plusMinus) / ((one.value + two.value) / 2);
  const measured: Reading = { value: index, plusMinus, unit: "share" };
  const even = sound(about, measured);
  const broken = LENGTH_LIMITS.find(({ value }) => clearlyBeyond(index, plusMinus, value));
  if (broken === undefined) return { remark: null, open: null, sound: even };
  return {
    remark: {
      kind: "remark",
      check: "symmetry",
      level: broken.level,
      yardstick: study.yardstick,
      side: second.weightOn,
      panels: panels.map(({ id }) => id),
      frames: panels.map(({ frame }) => frame),
      spots: panels.map(({ id }) => ({ panel: id, view: "side", joints: FEET })),
      measured,
      expected: { value: broken.value, plusMinus: 0, unit: "share" },
      title: "The two steps differ in length",
      why: `${capital(words(first.weightOn, one))}, ${words(second.weightOn, two)}: ${percent(measured)} apart, and up to ${percent({ value: broken.value, plusMinus: 0 })} passes as even. It ${broken.level === "shows" ? "will" : "may"} read as a limp.`,
      source: LENGTH_SOURCE,
      beyond: (index - broken.value) / broken.value,
    },
    open: null,
    sound: even,
  };
}

const NEEDS = "both feet marked, one ahead of the other, at the contacts of both steps";

function words(side: Stride["first"]["weightOn"], length: Reading): string {
  return `${whoseStep(side)} is ${percent(length)} of a leg long`;
}
