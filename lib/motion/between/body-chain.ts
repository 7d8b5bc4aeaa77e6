import { type JointName, SIDES, type Side, type SidePoint } from "../../body";
import { gathered } from "../../gathered";
import { parabolaSlope } from "./hermite";
import { mix } from "./mix";
import type { MotionKey } from "./motion-key";
import { curveBetween, type Neighbours } from "./neighbours";

/** What a joint above the legs hangs on, nearest first; those that stand side by side tell together. */
const HANGS_ON: readonly (readonly [JointName, readonly (readonly JointName[])[]])[] = (() => {
  const hips: readonly JointName[] = ["left-hip", "right-hip"];
  const shoulders: readonly JointName[] = ["left-shoulder", "right-shoulder"];
  const arm = (side: Side): [JointName, (readonly JointName[])[]][] => [
    [`${side}-shoulder`, [["neck"], hips]],
    [`${side}-elbow`, [[`${side}-shoulder`], ["neck"], hips]],
    [`${side}-wrist`, [[`${side}-elbow`], [`${side}-shoulder`], ["neck"], hips]],
  ];
  return [
    ["neck", [hips]],
    ...gathered(SIDES, arm),
    ["head", [["neck"], shoulders, hips]],
    ["load", [shoulders, ["neck"], hips]],
  ];
})();

/** A bone shorter than this, seen from the side, has no direction worth following. Leg lengths. */
const HAS_DIRECTION = 0.12;
/** A turn beyond this between two poses may as well have gone the other way round. Radians. */
const TURNS_WITHIN = (2 * Math.PI) / 3;

/** A body above the legs is restless: two poses a frame apart tell little of how it turns. */
const TURNING = { slopeOf: parabolaSlope, steady: true } as const;

/** A joint that hangs on others: where it is, once they are known. */
export interface Hanging {
  readonly joint: JointName;
  at(moment: number, known: ReadonlyMap<JointName, SidePoint>): SidePoint | null;
}

/**
 * Trunk, head, arms and load from one pose to the next: turned about what carries them, lengths going
 * evenly from the one to the other. What is seen end on, as shoulders are, goes in its carrier's frame.
 */
export function bodyChain(around: Neighbours): readonly Hanging[] {
  return gathered(HANGS_ON, ([joint, carriers]): Hanging[] => {
    const { from, to } = around;
    if (from.side[joint] === undefined || to.side[joint] === undefined) return [];
    const carrier = carriers.find((group) => both(around, group).length > 0);
    const names = carrier === undefined ? [] : both(around, carrier);
    const offset = offsetBetween(around, joint, names);
    if (offset === null) return [];
    return [
      {
        joint,
        at(moment, known) {
          const root = middleOf(names, (name) => known.get(name));
          if (root === null) return null;
          const by = offset(moment);
          return { x: root.x + by.x, y: root.y + by.y };
        },
      },
    ];
  });
}

/** The names that both poses have marked. */
function both({ from, to }: Neighbours, names: readonly JointName[]): JointName[] {
  return names.filter((name) => from.side[name] !== undefined && to.side[name] !== undefined);
}

/** From the carriers to the joint, at any moment; of no carriers, from the ground's origin. */
function offsetBetween(around: Neighbours, joint: JointName, names: readonly JointName[]) {
  const offsetOf = (key: MotionKey): SidePoint | null => {
    const point = key.side[joint];
    const root = middleOf(names, (name) => key.side[name]);
    return point === undefined || root === null
      ? null
      : { x: point.x - root.x, y: point.y - root.y };
  };
  const [a, b] = [offsetOf(around.from), offsetOf(around.to)];
  if (a === null || b === null) return null;
  const lengths = [Math.hypot(a.x, a.y), Math.hypot(b.x, b.y)] as const;
  const first = Math.atan2(a.y, a.x);
  const turn = shortTurn(Math.atan2(b.y, b.x) - first);
  if (names.length > 0 && Math.min(...lengths) > HAS_DIRECTION && Math.abs(turn) < TURNS_WITHIN) {
    const angle = angleBetween(around, { offsetOf, first, turn });
    if (angle === null) return null;
    return (at: number): SidePoint => {
      const share = (at - around.from.until) / (around.to.frame - around.from.until);
      const length = mix(lengths[0], lengths[1], share);
      return { x: length * Math.cos(angle(at)), y: length * Math.sin(angle(at)) };
    };
  }
  const x = curveBetween(around, (key) => offsetOf(key)?.x ?? null, TURNING);
  const y = curveBetween(around, (key) => offsetOf(key)?.y ?? null, TURNING);
  if (x === null || y === null) return null;
  return (at: number): SidePoint => ({ x: x(at), y: y(at) });
}

interface Turning {
  readonly offsetOf: (key: MotionKey) => SidePoint | null;
  /** The first pose's direction, and how far it is from there to the next. Radians. */
  readonly first: number;
  readonly turn: number;
}

/** The direction at any moment; each pose's is counted from the one before it, the short way round. */
function angleBetween(around: Neighbours, { offsetOf, first, turn }: Turning) {
  const directed = (key: MotionKey, from: number): number | null => {
    const offset = offsetOf(key);
    return offset === null ? null : from + shortTurn(Math.atan2(offset.y, offset.x) - from);
  };
  return curveBetween(
    around,
    (key) => {
      if (key === around.from) return first;
      if (key === around.to) return first + turn;
      return directed(key, key === around.before ? first : first + turn);
    },
    TURNING,
  );
}

/** The middle of those that are known; of no names, the origin. */
function middleOf(
  names: readonly JointName[],
  at: (name: JointName) => SidePoint | undefined,
): SidePoint | null {
  if (names.length === 0) return { x: 0, y: 0 };
  let [x, y, count] = [0, 0, 0];
  for (const name of names) {
    const point = at(name);
    if (point === undefined) continue;
    x += point.x;
    y += point.y;
    count += 1;
  }
  return count < names.length ? null : { x: x / count, y: y / count };
}

function shortTurn(angle: number): number {
  return Math.atan2(Math.sin(angle), Math.cos(angle));
}
