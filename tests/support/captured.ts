import {
  LIMB_JOINTS,
  type Mark,
  otherSide,
  type PoseMarks,
  SIDES,
  type Side,
} from "../../lib/body";
import type { Walk, WalkPanel } from "../../lib/gait";
import { STEP_POSES } from "../../lib/motion";

type Triple = readonly number[];
type Points = Readonly<Record<string, Triple>>;

/** One captured pose, as in the reference: metres, x ahead, y up, z to the walker's left. */
export interface CapturedPose {
  readonly frame: number;
  readonly pelvisX: number;
  readonly points: Points;
}

export interface CapturedStep {
  readonly leadFoot: string;
  readonly poses: Readonly<Record<string, CapturedPose>>;
}

export interface CapturedWalk {
  readonly framesPerSecond: number;
  readonly legLength: number;
  readonly steps: readonly CapturedStep[];
}

const LEG_UNITS = 420;
const SOLES = new Set(["heel", "ball", "toe"]); // virtual: fixed to the foot, good to 3 % of a leg
const SOLE_PRECISION = 0.03;

/**
 * A captured walk as it would be marked on a travelling sheet. Worked here by hand, away from the
 * library's own conversion, which these walks are held against.
 */
export function capturedWalk(captured: CapturedWalk): Walk {
  const { legLength, framesPerSecond, steps } = captured;
  const last = steps.at(-1);
  const panels = steps.flatMap((step, nth) =>
    STEP_POSES.map((pose, order) => panel(step, pose, `${nth}.${order}`, sideOf(step), legLength)),
  );
  if (last !== undefined) {
    const lands = otherSide(sideOf(last));
    const end = panel(last, "next_contact", `${steps.length}.0`, lands, legLength);
    panels.push({ ...end, pose: "contact" });
  }
  return {
    kind: "plain",
    framesPerSecond,
    exposure: 1,
    travel: "travelling",
    advance: 0,
    build: { headsTall: 7.5, legShare: 0.53, statureMetres: null },
    panels: panels.toSorted((a, b) => a.frame - b.frame || (a.id < b.id ? -1 : 1)),
  };
}

function sideOf({ leadFoot }: CapturedStep): Side {
  if (leadFoot === "left" || leadFoot === "right") return leadFoot;
  throw new Error(`left or right foot expected, got ${leadFoot}`);
}

function panel(
  step: CapturedStep,
  pose: string,
  id: string,
  weightOn: Side,
  legMetres: number,
): WalkPanel {
  const captured = step.poses[pose];
  if (captured === undefined) throw new Error(`no ${pose} in the captured step`);
  const { frame, pelvisX, points } = captured;
  return {
    id,
    frame,
    pose: pose === "next_contact" ? "contact" : (pose as WalkPanel["pose"]),
    weightOn,
    place: pelvisX / legMetres,
    marks: marksOf(points, pelvisX, legMetres),
  };
}

function marksOf(points: Points, pelvisX: number, legMetres: number): PoseMarks {
  const side: Record<string, Mark> = {};
  const front: Record<string, Mark> = {};
  const unit = LEG_UNITS / legMetres;
  const put = (joint: string, [x = 0, y = 0, zLeft = 0]: Triple, precision: number) => {
    side[joint] = { x: 360 + (x - pelvisX) * unit, y: 1080 - y * unit, precision };
    front[joint] = { x: 360 + zLeft * unit, y: 1080 - y * unit, precision }; // his left is our right
  };
  for (const name of ["head", "neck"]) {
    const point = points[name];
    if (point !== undefined) put(name, point, 0);
  }
  for (const sideName of SIDES) {
    for (const joint of LIMB_JOINTS) {
      const point = points[`${sideName.charAt(0)}_${joint}`];
      const precision = SOLES.has(joint) ? SOLE_PRECISION * LEG_UNITS : 0;
      if (point !== undefined) put(`${sideName}-${joint}`, point, precision);
    }
  }
  return { side, front };
}
