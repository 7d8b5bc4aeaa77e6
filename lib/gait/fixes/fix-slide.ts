import {
  footJoints,
  JOINTS,
  type JointName,
  markOf,
  otherSide,
  PANEL,
  type Side,
  shiftedMarks,
} from "../../body";
import type { Remark } from "../finding";
import { placeOf } from "../ground-mark";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";
import { percent, sided } from "../words";
import { marksMoved, moveFoot, placeJoints } from "./move-pose";
import { movedPanel, type Proposal } from "./proposal";

/** A foot that moved less than this along the ground is left where it is, leg lengths. */
const STAYS = 0.01;

/**
 * A foot that slips: back onto its footprint, as it is; or laid down as it lies on the pose before or
 * after, where it lost its shape as well, knees solved; or the whole drawing moved, where the body went
 * along with the foot.
 */
export function fixSlide(study: Study, { side, panels, spots }: Remark): readonly Proposal[] {
  const joint = spots.at(-1)?.joints[0];
  const step = study.steps.find(
    ({ weightOn, panels: own }) =>
      weightOn === side && panels.every((id) => own.some((panel) => panel.id === id)),
  );
  const from = step?.panels.find(({ id }) => id === panels[0]);
  if (step === undefined || from === undefined || side === null || joint === undefined) return [];
  const end = step.passing ?? from;
  const stance = step.panels
    .slice(step.panels.indexOf(from) + 1, step.panels.indexOf(end) + 1)
    .filter(({ weightOn }) => weightOn !== otherSide(side));
  const slipped = stance.filter((panel) => Math.abs(travel(study, joint, from, panel)) > STAYS);
  const title = `Put the ${side} foot on its footprint`;
  const each = (make: (panel: WalkPanel) => Proposal | null): Proposal[] => {
    const made = slipped.map(make).filter((one) => one !== null);
    if (made.length === 0) return [];
    const [first] = made;
    return [{ title: first?.title ?? title, changes: made.flatMap(({ changes }) => changes) }];
  };
  const flat = step.down;
  return [
    ...each((panel) => back(study, panel, side, travel(study, joint, from, panel))),
    ...(flat === null
      ? []
      : each((panel) => (panel === flat ? null : laid(study, panel, side, flat)))),
    ...(flat === null || step.passing === null ? [] : [laid(study, flat, side, step.passing)]),
    ...each((panel) => whole(study, panel, travel(study, joint, from, panel))),
  ];

  /** The drawing is right and stands in the wrong place: it goes back as it is. */
  function whole({ leg, walk }: Study, panel: WalkPanel, by: number): Proposal {
    const way = by > 0 ? "back" : "forward";
    const amount = percent({ value: by, plusMinus: 0 });
    const name = `Move the whole ${sided(side, panel.pose)} ${way} by ${amount} of a leg`;
    if (walk.travel === "travelling" && panel.place !== null) {
      return {
        title: name,
        changes: [{ kind: "place", panel: panel.id, place: panel.place - by }],
      };
    }
    const legUnits = leg.kind === "value" ? leg.value : PANEL.plainLeg;
    const marks = shiftedMarks(panel.marks.side, JOINTS, { x: -by * legUnits, y: 0 });
    return { title: name, changes: marksMoved(panel, { ...panel.marks, side: marks }) };
  }

  function back({ leg }: Study, panel: WalkPanel, foot: Side, by: number): Proposal {
    const legUnits = leg.kind === "value" ? leg.value : PANEL.plainLeg;
    return movedPanel(panel, moveFoot(panel, foot, { forward: -by * legUnits, up: 0 }), title, leg);
  }

  function laid({ leg, walk }: Study, panel: WalkPanel, foot: Side, as: WalkPanel): Proposal {
    const legUnits = leg.kind === "value" ? leg.value : PANEL.plainLeg;
    const along = (placeOf(as, walk) - placeOf(panel, walk)) * legUnits;
    const to = new Map<JointName, { x: number; y: number }>();
    for (const one of footJoints(foot)) {
      const mark = markOf(as.marks.side, one);
      if (mark !== null) to.set(one, { x: mark.x + along, y: mark.y });
    }
    const moved = placeJoints(panel, to);
    return movedPanel(panel, moved, `Lay the ${foot} foot down as at the ${as.pose}`, leg);
  }
}

/** How far a mark went along the ground since an earlier panel, forward positive. Leg lengths. */
function travel(study: Study, joint: JointName, from: WalkPanel, to: WalkPanel): number {
  const start = study.ground(from, joint);
  const end = study.ground(to, joint);
  return start === null || end === null ? Number.NaN : end.x - start.x;
}
