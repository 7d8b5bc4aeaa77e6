import {
  groundToFront,
  groundToSide,
  type JointName,
  type Mark,
  PANEL,
  type PoseMarks,
  type ViewMarks,
} from "../body";
import { defaultBrief } from "./brief";
import { CAPTURED_WALK, type CapturedPose } from "./captured-walk";
import { emptyPanel } from "./lay-out";
import { byFrame } from "./order";
import type { Panel, PanelId, Sheet } from "./sheet";

const FRAMES_PER_SECOND = 24;
/** How exactly the foot's points are known, leg lengths: they are a model's, not the capture's. */
const SOLE_PRECISION = 0.03;

/**
 * A stride of a real walk, marked in both views and not drawn: left contact to left contact, travelling,
 * each panel looking at the ground under its pelvis. Held against life, nothing shows.
 *
 * Units:   frames at 24 a second, rounded from 120; a leg is 420 panel units
 * Source:  see `captured-walk`
 */
export function capturedExample(newId: () => PanelId): Sheet {
  const panels = CAPTURED_WALK.poses.map((captured): Panel => {
    const { pose, weightOn } = captured;
    const place = toLegs(captured.pelvis - CAPTURED_WALK_START.pelvis);
    const empty = emptyPanel({ id: newId(), frame: frameOf(captured), pose, weightOn, place });
    return { ...empty, marks: marksOf(captured) };
  });
  const contacts = panels.filter(({ pose }) => pose === "contact");
  const [from = 1, middle = 1, to = 1] = contacts.map(({ frame }) => frame);
  const travelled = contacts.at(-1)?.place ?? 0;
  return {
    head: {
      title: "A plain walk, captured",
      shot: "",
      kind: "plain",
      framesPerSecond: FRAMES_PER_SECOND,
      exposure: 1,
      yardstick: "life",
      travel: "travelling",
      framesPerStep: { left: middle - from, right: to - middle },
      stepLength: travelled / 2,
      advance: travelled / (to - from),
      build: defaultBrief.build,
      loop: { from, to },
      credit: CREDIT,
    },
    panels: panels.sort(byFrame),
  };
}

const CREDIT =
  "Walk 39_01 of the Carnegie Mellon University Graphics Lab Motion Capture Database. " +
  "The data used in this project was obtained from mocap.cs.cmu.edu. " +
  "The database was created with funding from NSF EIA-0196217.";

const CAPTURED_WALK_START = CAPTURED_WALK.poses[0] ?? { frame: 0, pelvis: 0 };

/** The capture's tenths of a millimetre → leg lengths. */
function toLegs(length: number): number {
  return length / CAPTURED_WALK.legLength;
}

function frameOf({ frame }: CapturedPose): number {
  const seconds = (frame - CAPTURED_WALK_START.frame) / CAPTURED_WALK.framesPerSecond;
  return 1 + Math.round(seconds * FRAMES_PER_SECOND);
}

/** The pose's marks, as far to a panel unit's hundredth: a thousandth of what an eye can see. */
function marksOf({ pelvis, joints }: CapturedPose): PoseMarks {
  const legLength = PANEL.plainLeg;
  const side: { [J in JointName]?: Mark } = {};
  const front: { [J in JointName]?: Mark } = {};
  for (const [joint, [x, height, left]] of Object.entries(joints) as [
    JointName,
    readonly [number, number, number],
  ][]) {
    const precision = /heel|ball|toe/.test(joint) ? SOLE_PRECISION * legLength : 0;
    const y = toLegs(height);
    const aside = groundToSide({ x: toLegs(x - pelvis), y }, { place: 0, legLength });
    const ahead = groundToFront({ z: -toLegs(left), y }, legLength); // ground z runs to his right
    side[joint] = { x: hundredth(aside.x), y: hundredth(aside.y), precision };
    front[joint] = { x: hundredth(ahead.x), y: hundredth(ahead.y), precision };
  }
  return { side: side satisfies ViewMarks, front: front satisfies ViewMarks };
}

function hundredth(units: number): number {
  return Math.round(units * 100) / 100;
}
