import {
  groundToFront,
  groundToSide,
  JOINTS,
  type JointName,
  limbJoint,
  type Mark,
  type Side,
} from "../../lib/body";
import { placeOf, type Walk, type WalkPanel, walkMotion } from "../../lib/gait";
import { studyWalk } from "../../lib/gait/study";
import { median } from "../../lib/geometry";
import { alongOf, heightOf, legOf, moveMarks, nextOf, panelOf } from "./seeded/posed";
import type { Fault } from "./seeding";

const DEGREES = Math.PI / 180;
const ROUNDS = 4; // the median of a step hardly hangs on the frames that are put in

/** The knee put where the leg is bent by so much between the hip and the ankle that there are. */
function bent(into: Walk, name: string, side: Side, angle: number): Walk {
  const at = (part: "hip" | "knee" | "ankle") => ({
    x: alongOf(into, name, limbJoint(side, part)),
    y: heightOf(into, name, limbJoint(side, part)),
  });
  const [hip, knee, ankle] = [at("hip"), at("knee"), at("ankle")];
  const aside = Math.tan(angle / 2) / 2;
  const to = {
    x: (hip.x + ankle.x) / 2 + (hip.y - ankle.y) * aside,
    y: (hip.y + ankle.y) / 2 - (hip.x - ankle.x) * aside,
  };
  const by = { ahead: to.x - knee.x, up: to.y - knee.y };
  return moveMarks(into, name, [limbJoint(side, "knee")], by);
}

const around = (side: Side) => [`${side} before`, `${side} after`] as const;

/** The frame before a side's passing and the one after it, drawn as breakdowns that lie on the way. */
function withFramesAround(into: Walk, side: Side): Walk {
  const passing = panelOf(into, `${side} passing`);
  const added = around(side).map((id, nth) =>
    drawnBetween(into, { ...passing, id, frame: passing.frame + (nth === 0 ? -1 : 1) }),
  );
  const panels = [...into.panels, ...added].toSorted((a, b) => a.frame - b.frame);
  return { ...into, panels };
}

function drawnBetween(into: Walk, panel: WalkPanel): WalkPanel {
  const figure = walkMotion(studyWalk(into, "trade")).motion.at(panel.frame);
  if (figure === null) throw new Error(`nothing at frame ${panel.frame}`);
  const stretch = { place: placeOf(panel, into), legLength: legOf(into) };
  const precision = panel.marks.side["left-hip"]?.precision ?? 0;
  const side: Partial<Record<JointName, Mark>> = {};
  const front: Partial<Record<JointName, Mark>> = {};
  for (const joint of JOINTS) {
    const [seen, ahead] = [figure.side[joint], figure.front[joint]];
    if (seen !== undefined) side[joint] = { ...groundToSide(seen, stretch), precision };
    if (ahead !== undefined) {
      front[joint] = { ...groundToFront(ahead, stretch.legLength), precision };
    }
  }
  return { ...panel, pose: "breakdown", marks: { side, front } };
}

/** What passes in a side's step, reckoned from its motion. Radians a frame. */
function limitIn(into: Walk, side: Side): number {
  const { motion } = walkMotion(studyWalk(into, "trade"));
  const from = panelOf(into, `${side} contact`).frame;
  const frames = panelOf(into, nextOf(into, side)).frame - from;
  const bends = Array.from({ length: frames + 1 }, (_, nth) => {
    const figure = motion.at(from + nth)?.side ?? {};
    const [hip, knee, ankle] = (["hip", "knee", "ankle"] as const).map(
      (part) => figure[limbJoint(side, part)] ?? { x: 0, y: 0 },
    );
    if (!hip || !knee || !ankle) throw new Error("a leg has three joints");
    const [thigh, shank] = [
      Math.hypot(hip.x - knee.x, hip.y - knee.y),
      Math.hypot(knee.x - ankle.x, knee.y - ankle.y),
    ];
    const apart = Math.hypot(hip.x - ankle.x, hip.y - ankle.y);
    const cosine = (apart ** 2 - thigh ** 2 - shank ** 2) / (2 * thigh * shank);
    return Math.acos(Math.min(1, Math.max(-1, cosine)));
  });
  const speeds = bends.slice(1).map((bend, nth) => Math.abs(bend - (bends[nth] ?? bend)));
  return Math.max(8 * DEGREES, 2.5 * median(speeds));
}

/** Straight at its passing, and a frame before and after it bent by so many times what passes in a frame. */
function snapping(into: Walk, side: Side, times: number): Walk {
  const straight = bent(withFramesAround(into, side), `${side} passing`, side, 0);
  let now = straight;
  for (let round = 0; round < ROUNDS; round += 1) {
    const angle = times * limitIn(now, side);
    now = around(side).reduce((rest, name) => bent(rest, name, side, angle), straight);
  }
  return now;
}

const BONES = "a knee that is moved by itself changes the length of thigh and shank";

/** A knee that is thrown straight and back within two frames. */
export const SNAP_FAULTS: readonly Fault[] = [
  {
    name: "knee that is thrown straight and back",
    check: "snap",
    level: "may-show",
    panels: ["@ before", "@ after"],
    fits: (into, side) => {
      const { frame } = panelOf(into, `${side} passing`);
      return into.panels.every((panel) => Math.abs(panel.frame - frame) !== 1);
    },
    brings: {
      "limb-length": BONES,
      reach: BONES,
      symmetry: "a knee that is straight in one step alone is no mirror image of the other",
    },
    put: snapping,
  },
];
