/** A point in space, in the file's own axes and unit. */
export type Triple = readonly [x: number, y: number, z: number];

/** Rows of a rotation, joint's own axes → the file's. */
export type Rotation = readonly [Triple, Triple, Triple];

/** Where a joint is in one frame, and how it is turned. */
export interface Posture {
  readonly at: Triple;
  readonly turn: Rotation;
}

export interface Bvh {
  readonly frames: number;
  readonly frameSeconds: number;
  /** Every joint of one frame, the first is 0. End sites are named after their joint: "Head end". */
  posture(frame: number): ReadonlyMap<string, Posture>;
}

interface Joint {
  readonly name: string;
  readonly parent: number;
  readonly offset: Triple;
  readonly channels: readonly string[];
  /** Where its channels begin in a row of the motion. */
  readonly first: number;
}

const LEVEL: Rotation = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];

/**
 * Reads a BVH file and works out its forward kinematics exactly: a joint is turned by its channels in the
 * order they stand in, after its parent. Written for the tests, apart from the library.
 *
 * Errors:  Error where the text is no BVH
 */
export function readBvh(text: string): Bvh {
  const [hierarchy = "", motion] = text.split(/^MOTION\s*$/m);
  if (motion === undefined) throw new Error("no MOTION in this file");
  const joints = readJoints(hierarchy);
  const [head, ...rows] = motion.trim().split(/Frame Time:\s*/);
  const [seconds = "", ...lines] = (rows[0] ?? "").split("\n");
  const values = lines.filter((line) => line.trim() !== "").map((line) => numbers(line));
  const frames = Number(/Frames:\s*(\d+)/.exec(head ?? "")?.[1]);
  if (values.length !== frames) throw new Error(`${frames} frames said, ${values.length} there`);
  return {
    frames,
    frameSeconds: Number(seconds),
    posture: (frame) => postures(joints, values[frame] ?? []),
  };
}

function readJoints(hierarchy: string): Joint[] {
  const joints: Joint[] = [];
  const open: number[] = [];
  let named: { name: string; parent: number } | null = null;
  let offset: Triple = [0, 0, 0];
  let first = 0;
  for (const line of hierarchy.split("\n").map((text) => text.trim())) {
    const [word = "", ...rest] = line.split(/\s+/);
    const parent = open.at(-1) ?? -1;
    if (word === "ROOT" || word === "JOINT") named = { name: rest.join(" "), parent };
    if (word === "End") named = { name: `${joints[parent]?.name} end`, parent };
    if (word === "OFFSET") {
      offset = triple(rest.map(Number));
      if (named?.name.endsWith(" end")) joints.push({ ...named, offset, channels: [], first });
    }
    if (word === "CHANNELS" && named !== null) {
      const channels = rest.slice(1);
      joints.push({ ...named, offset, channels, first });
      first += channels.length;
    }
    if (word === "{") open.push(joints.length); // the joint that is about to be read
    if (word === "}") open.pop();
  }
  return joints;
}

function postures(joints: readonly Joint[], row: readonly number[]): Map<string, Posture> {
  const told: Posture[] = [];
  for (const joint of joints) {
    const parent = told[joint.parent] ?? { at: [0, 0, 0] as const, turn: LEVEL };
    const shift = [...joint.offset] as [number, number, number];
    let own = LEVEL;
    for (const [nth, channel] of joint.channels.entries()) {
      const value = row[joint.first + nth] ?? Number.NaN;
      const axis = "XYZ".indexOf(channel.charAt(0));
      if (channel.endsWith("position")) shift[axis] = (shift[axis] ?? 0) + value;
      else own = times(own, about(axis, (value * Math.PI) / 180));
    }
    const moved = turned(parent.turn, shift);
    told.push({
      at: triple(parent.at.map((value, axis) => value + (moved[axis] ?? Number.NaN))),
      turn: times(parent.turn, own),
    });
  }
  return new Map(told.map((posture, at) => [joints[at]?.name ?? "", posture]));
}

/** A vector of the joint's own axes in the file's. */
export function turned(turn: Rotation, [x, y, z]: Triple): Triple {
  return triple(turn.map(([a, b, c]) => a * x + b * y + c * z));
}

/** The way back of `turned`. */
export function unturned(turn: Rotation, vector: Triple): Triple {
  return triple(
    [0, 1, 2].map((column) =>
      turn.reduce((sum, row, at) => sum + (row[column] ?? 0) * (vector[at] ?? 0), 0),
    ),
  );
}

function about(axis: number, angle: number): Rotation {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  if (axis === 0)
    return [
      [1, 0, 0],
      [0, c, -s],
      [0, s, c],
    ];
  if (axis === 1)
    return [
      [c, 0, s],
      [0, 1, 0],
      [-s, 0, c],
    ];
  return [
    [c, -s, 0],
    [s, c, 0],
    [0, 0, 1],
  ];
}

function times(a: Rotation, b: Rotation): Rotation {
  const row = ([x, y, z]: Triple): Triple =>
    triple([0, 1, 2].map((at) => x * (b[0][at] ?? 0) + y * (b[1][at] ?? 0) + z * (b[2][at] ?? 0)));
  return [row(a[0]), row(a[1]), row(a[2])];
}

function triple([x = Number.NaN, y = Number.NaN, z = Number.NaN]: readonly number[]): Triple {
  return [x, y, z];
}

function numbers(line: string): number[] {
  return line.trim().split(/\s+/).map(Number);
}
