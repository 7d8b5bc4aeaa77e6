import { type JointName, PANEL } from "../../body";
import type { Point } from "../../geometry";
import { footprint, spanOfFeet, tick, tilt } from "./foot";
import { markPoints, middleOf, movedTo } from "./mark-points";
import { type Path, type Shaper, type Shaping, shapeOf } from "./shape";

const isHip = (joint: JointName): boolean => joint.endsWith("hip");
const isShoulder = (joint: JointName): boolean => joint.endsWith("shoulder");

/**
 * A pose over its mirrored partner: the partner's limb hung from the same joint, its level or its span
 * beside this one's. Shoulders are held against the level.
 */
export const overPartner: Shaper = (shaping) => {
  const { joints } = shaping;
  if (joints.every(isShoulder)) return tilt(shaping);
  if (joints.length >= 3) return limbOverPartner(shaping);
  return joints.length === 2 && !joints.every(isHip)
    ? spanOverPartner(shaping)
    : heightOverPartner(shaping);
};

function partnerPoints({ earlier, view, earlierJoints }: Shaping): Point[] | null {
  return earlier === null ? null : markPoints(earlier.marks[view], earlierJoints);
}

const limbOverPartner: Shaper = (shaping) => {
  const limb = markPoints(shaping.panel.marks[shaping.view], shaping.joints);
  const partner = partnerPoints(shaping);
  const [from, middle] = limb ?? [];
  if (limb === null || from === undefined || middle === undefined) return null;
  const hung = partner?.[0] === undefined ? [] : [movedTo(partner, partner[0], from)];
  return shapeOf({ dashed: hung, solid: [limb], label: middle });
};

const SPAN_GAP = 18; // panel units between a span and its partner's

const spanOverPartner: Shaper = (shaping) => {
  const own = spanOfFeet(shaping);
  const partner = partnerPoints(shaping);
  const [span] = own?.solid ?? [];
  const start = span?.[1];
  if (own === null || partner === null || start === undefined) return own;
  const xs = partner.map(({ x }) => x);
  const y = start.y + SPAN_GAP;
  const width = Math.max(...xs) - Math.min(...xs);
  const ghost: Path = [
    { x: start.x, y },
    { x: start.x + width, y },
  ];
  return { ...own, dashed: [ghost] };
};

const heightOverPartner: Shaper = (shaping) => {
  const own = markPoints(shaping.panel.marks[shaping.view], shaping.joints);
  const partner = partnerPoints(shaping);
  if (own === null) return null;
  const here = middleOf(own);
  if (partner === null) return shapeOf({ solid: [tick(here)], label: here });
  const there = { x: here.x, y: middleOf(partner).y };
  return shapeOf({
    dashed: [wide(there)],
    solid: [wide(here)],
    arrow: [there, here],
    label: { x: here.x, y: Math.max(here.y, there.y) },
  });
};

const WIDE = 80; // panel units to either side

function wide({ x, y }: Point): Path {
  return [
    { x: x - WIDE, y },
    { x: x + WIDE, y },
  ];
}

/** Where the first pose has a joint, and an arrow to where the last one has it. */
export const fromFirstPose: Shaper = (shaping) => {
  const [here] = markPoints(shaping.panel.marks[shaping.view], shaping.joints.slice(0, 1)) ?? [];
  const [there] = partnerPoints(shaping) ?? [];
  if (here === undefined || there === undefined) return null;
  return shapeOf({ rings: [there], arrow: [there, here], label: here });
};

const LETTER_OVER = 34; // panel units over its joint

/** Two marks that changed sides: where each was before, crossing, and whose each is called. */
export const crossedSides: Shaper = (shaping) => {
  const own = markPoints(shaping.panel.marks[shaping.view], shaping.joints.slice(0, 2));
  const before = partnerPoints(shaping);
  const [left, right] = own ?? [];
  if (own === null || left === undefined || right === undefined) return null;
  const ways: Path[] = own.flatMap((at, index) => {
    const was = before?.[index];
    return was === undefined ? [] : [[was, at]];
  });
  const over = ({ x, y }: Point): Point => ({ x, y: y - LETTER_OVER });
  return shapeOf({
    dashed: ways,
    solid: [[left, right]],
    letters: [
      { text: "L", at: over(left) },
      { text: "R", at: over(right) },
    ],
    label: middleOf(own),
  });
};

/** A foot that leaves its footprint early, or hips that should have shifted: from where to where. */
export const leadingIn: Shaper = (shaping) => {
  const { panel, earlier, view, joints, groundShift } = shaping;
  const own = markPoints(panel.marks[view], joints);
  const before = partnerPoints(shaping);
  if (own === null) return null;
  const here = middleOf(own);
  if (before === null || earlier === null) return shapeOf({ rings: [here], label: here });
  const was = middleOf(before);
  const there = { x: was.x + (view === "side" ? groundShift : 0), y: was.y };
  if (joints.every(isHip)) {
    const plumb: Path = [here, { x: here.x, y: PANEL.groundY }];
    return shapeOf({ dashed: [plumb], rings: [there], arrow: [there, here], label: here });
  }
  const side = joints[0]?.startsWith("left-") ? "left" : "right";
  const print = view === "side" ? footprint({ groundShift }, earlier, side) : null;
  return shapeOf({
    dashed: print === null ? [tick(there)] : [print],
    arrow: [there, here],
    label: here,
  });
};
