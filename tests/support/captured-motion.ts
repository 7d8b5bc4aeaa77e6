import { readFileSync } from "node:fs";
import { type JointName, SIDES, type Side } from "../../lib/body";
import { readBvh, type Triple, turned, unturned } from "./bvh";

/** Where the captured walks lie that are too large to be kept with the tests. */
export const CLIPS = new URL("../../../shared/reference/walks/", import.meta.url);

/** The plain walks among them, and the dancer's. */
export const WALKS = ["07_01", "16_15", "16_22", "35_08", "39_01", "05_01"] as const;

/** A point in ground space: x ahead, y up, z to the walker's right. Leg lengths. */
export interface SpacePoint {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

export type SpaceFigure = ReadonlyMap<JointName, SpacePoint>;

/** One step of a clip by its own events; frames of the file, the first is 1. */
export interface ClipStep {
  readonly lead: Side;
  readonly contact: number;
  readonly down: number;
  readonly passing: number;
  readonly up: number;
  readonly next: number;
}

export interface Clip {
  readonly name: string;
  readonly framesPerSecond: number;
  readonly steps: readonly ClipStep[];
  /** The whole figure of a frame, the first is 1. */
  figure(frame: number): SpaceFigure;
}

const NAMES: Readonly<Record<string, string>> = {
  shoulder: "Arm",
  elbow: "ForeArm",
  wrist: "Hand",
  hip: "UpLeg",
  knee: "Leg",
  ankle: "Foot",
};

/** Sole points are fixed to the bones of the foot: heel and ball to the foot's own, the toe to the toe's. */
const SOLES = { heel: "Foot", ball: "Foot", toe: "ToeBase" } as const;

const read = new Map<string, Clip>();

/** A captured walk in every frame, exactly as its file has it, with its published events. */
export function readClip(name: string): Clip {
  const clip = read.get(name) ?? newlyRead(name);
  read.set(name, clip);
  return clip;
}

function newlyRead(name: string): Clip {
  const bvh = readBvh(readFileSync(new URL(`${name}.bvh`, CLIPS), "utf8"));
  const truth = json("truth.json")[name] as Truth;
  const posed = json("poses.json")[name] as Posed;
  const soles = solesOf(bvh, posed);
  const known = new Map<number, SpaceFigure>();
  const figureAt = (frame: number): SpaceFigure => {
    const at = bvh.posture(frame - 1);
    const placed: [JointName, Triple][] = [
      ["head", at.get("Head")?.at ?? NOWHERE],
      ["neck", at.get("Neck")?.at ?? NOWHERE],
    ];
    for (const side of SIDES) {
      for (const [joint, bone] of Object.entries(NAMES))
        placed.push([`${side}-${joint}` as JointName, at.get(named(side, bone))?.at ?? NOWHERE]);
    }
    for (const { joint, bone, local } of soles) {
      const foot = at.get(bone);
      if (foot === undefined) continue;
      const [x, y, z] = turned(foot.turn, local);
      placed.push([joint, [foot.at[0] + x, foot.at[1] + y, foot.at[2] + z]]);
    }
    const leg = truth.leg_length;
    return new Map(
      placed.map(([joint, [x, y, z]]) => [joint, { x: x / leg, y: y / leg, z: z / leg }]),
    );
  };
  return {
    name,
    framesPerSecond: truth.fps,
    steps: truth.steps.map(({ lead_foot, next_contact, ...step }) => ({
      ...step,
      lead: lead_foot === "L" ? "left" : "right",
      next: next_contact,
    })),
    figure(frame) {
      const told = known.get(frame) ?? figureAt(frame);
      known.set(frame, told);
      return told;
    },
  };
}

const NOWHERE: Triple = [Number.NaN, Number.NaN, Number.NaN];

interface Truth {
  readonly leg_length: number;
  readonly fps: number;
  readonly steps: readonly (Omit<ClipStep, "lead" | "next"> & {
    readonly lead_foot: "L" | "R";
    readonly next_contact: number;
  })[];
}

interface Posed {
  readonly steps: readonly {
    readonly poses: Readonly<Record<string, { frame: number; points: Record<string, number[]> }>>;
  }[];
}

/** The sole points of the published poses, as they lie in the bones that carry them. */
function solesOf(bvh: ReturnType<typeof readBvh>, posed: Posed) {
  const pose = posed.steps[0]?.poses.contact;
  if (pose === undefined) throw new Error("no contact among the poses");
  const at = bvh.posture(pose.frame - 1);
  return SIDES.flatMap((side) =>
    Object.entries(SOLES).map(([part, bone]) => {
      const [x = 0, y = 0, left = 0] = pose.points[`${side.charAt(0)}_${part}`] ?? [];
      const carrier = at.get(named(side, bone));
      if (carrier === undefined) throw new Error(`no ${bone}`);
      const [ox, oy, oz] = carrier.at;
      const local = unturned(carrier.turn, [x - ox, y - oy, -left - oz]); // the poses store z to the left
      return { joint: `${side}-${part}` as JointName, bone: named(side, bone), local };
    }),
  );
}

function named(side: Side, bone: string): string {
  return `${side === "left" ? "Left" : "Right"}${bone}`;
}

function json(file: string): Record<string, unknown> {
  return JSON.parse(readFileSync(new URL(file, CLIPS), "utf8"));
}
