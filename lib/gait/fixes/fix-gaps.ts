import { JOINTS, shiftedMarks } from "../../body";
import { type Exposure, type Frame, nearestDrawn } from "../../motion";
import { stepFrames } from "../expected-frames";
import { expectedIn } from "../expected-in";
import type { Remark } from "../finding";
import type { FixChange } from "../fix";
import { placeOf } from "../ground-mark";
import type { Step } from "../step";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";
import { framesInWords } from "../words";
import { marksMoved } from "./move-pose";
import type { Proposal } from "./proposal";

/** A panel and the frame it is to stand at. */
interface Stem {
  readonly panel: WalkPanel;
  readonly frame: Frame;
}

/**
 * Uneven time: the nearest layout on whole exposures, the contacts staying where they are; where the two
 * steps of a stride differ, its middle contact in the middle, and each step's poses at their shares. A step
 * that lasts otherwise than the one it goes by gets its frames, and what follows comes so much later.
 * On the spot a drawing goes with its stem over the ground, or stays where it lies: whichever leaves the
 * planted feet alone.
 */
export function fixGaps(study: Study, remark: Remark): readonly Proposal[] {
  const lasts = study.pattern !== null && remark.measured.unit === "frames";
  const layouts =
    remark.side === null
      ? [halves(study, remark)]
      : lasts
        ? [lasting(study, remark)]
        : inStep(study, remark);
  return layouts.flatMap((stems) => {
    const slid = stems.filter(({ panel, frame }) => panel.frame !== frame);
    if (slid.length === 0) return [];
    const changes = slid.map(
      ({ panel, frame }): FixChange => ({ kind: "slide", panel: panel.id, frame }),
    );
    const title = lasts
      ? `Give the step ${framesInWords(remark.expected.value)}`
      : remark.side === null
        ? "Give both steps the same time"
        : titleOf(slid);
    return [
      { title, changes },
      {
        title: `${title}, each drawing where it lies`,
        changes: [...changes, ...kept(study, slid)],
      },
    ];
  });
}

function titleOf(slid: readonly Stem[]): string {
  const [only, second] = slid;
  if (only === undefined || second !== undefined) return "Even out the step";
  return `Move the ${only.panel.pose} to frame ${only.frame}`;
}

/**
 * What keeps a drawing where it lies on the ground: a place of its own in a walk that travels; on the
 * spot, where the ground goes by with the frames, the figure moved along with it.
 */
function kept({ walk, leg }: Study, slid: readonly Stem[]): FixChange[] {
  return slid.flatMap(({ panel, frame }) => {
    const place = placeOf(panel, walk);
    const gone = place - placeOf({ ...panel, frame }, walk);
    if (!Number.isFinite(gone) || gone === 0) return [];
    if (walk.travel === "travelling") return [{ kind: "place", panel: panel.id, place }];
    if (leg.kind === "cannot-tell") return [];
    const side = shiftedMarks(panel.marks.side, JOINTS, { x: gone * leg.value, y: 0 });
    return marksMoved(panel, { ...panel.marks, side });
  });
}

/** The step's passing alone where it is the one that stands wrong, then all of its poses. */
function inStep(study: Study, { side, panels }: Remark): (readonly Stem[])[] {
  const step = study.steps.find(
    (one) => one.weightOn === side && panels.every((id) => holds(one, id)),
  );
  const timed = step === undefined ? null : expectedIn(study, step);
  if (step === undefined || timed === null) return [];
  const stems = timed.map(({ panel, expected }) => ({ panel, frame: expected }));
  const passing = stems.filter(({ panel }) => panel === step.passing);
  return study.common === "life" ? [passing, stems] : [stems];
}

function holds({ panels, next }: Step, id: string): boolean {
  return next?.id === id || panels.some((panel) => panel.id === id);
}

/** A step of as many frames as the one that it goes by; what follows comes so much later or sooner. */
function lasting({ steps, walk }: Study, { panels, expected }: Remark): readonly Stem[] {
  const step = steps.find(({ contact }) => contact.id === panels[0]);
  if (step?.next == null) return [];
  const { contact, next } = step;
  const to = contact.frame + expected.value;
  const later = walk.panels
    .filter(({ frame }) => frame >= next.frame)
    .map((panel) => ({ panel, frame: panel.frame + to - next.frame }));
  return [...scaled(step, { from: contact.frame, to, exposure: walk.exposure }), ...later];
}

/** Both steps of a stride as long as each other, as far as whole exposures allow. */
function halves({ steps, walk }: Study, { panels }: Remark): readonly Stem[] {
  const at = steps.findIndex(({ contact }) => contact.id === panels[0]);
  const [first, second] = [steps[at], steps[at + 1]];
  const end = second?.next;
  if (first === undefined || second === undefined || end == null) return [];
  const start = first.contact.frame;
  const middle = nearestDrawn((start + end.frame) / 2, walk.exposure);
  return [
    ...scaled(first, { from: start, to: middle, exposure: walk.exposure }),
    ...scaled(second, { from: middle, to: end.frame, exposure: walk.exposure }),
  ];
}

interface Room {
  readonly from: Frame;
  readonly to: Frame;
  readonly exposure: Exposure;
}

function scaled(step: Step, { from, to, exposure }: Room): Stem[] {
  const length = stepFrames(step);
  if (length === null) return [];
  return step.panels.map((panel) => {
    const share = (panel.frame - step.contact.frame) / length;
    return { panel, frame: nearestDrawn(from + share * (to - from), exposure) };
  });
}
