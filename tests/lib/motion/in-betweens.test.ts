import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { JOINTS, type JointName, SIDES } from "../../../lib/body";
import { inBetweens, type MotionKey, type SideFigure } from "../../../lib/motion";

const AIR = { left: null, right: null };

/** A figure that has only these joints, the same in both views. */
function key(frame: number, points: Partial<Record<JointName, [number, number]>>): MotionKey {
  const entries = Object.entries(points);
  return {
    frame,
    until: frame,
    side: Object.fromEntries(entries.map(([joint, [x, y]]) => [joint, { x, y }])),
    front: Object.fromEntries(entries.map(([joint, [x, y]]) => [joint, { z: x / 10, y }])),
    planted: AIR,
  };
}

const near = fc.double({ min: -2, max: 2, noNaN: true });
const points = fc.dictionary(fc.constantFrom(...JOINTS), fc.tuple(near, near), {
  minKeys: 0,
  maxKeys: JOINTS.length,
});
const stance = fc.constantFrom(null, { from: -3, to: 14 }, { from: 12, to: 31.5 });
const keys = fc
  .array(fc.record({ gap: fc.integer({ min: 0, max: 9 }), points, left: stance, right: stance }), {
    minLength: 1,
    maxLength: 6,
  })
  .map((poses) => {
    let frame = 1;
    return poses.map(({ gap, points: at, left, right }) => {
      frame += gap;
      return { ...key(frame, at), planted: { left, right } };
    });
  });

describe("in-betweens of any marks", () => {
  it("are finite, and exact at every pose", () => {
    fc.assert(
      fc.property(keys, fc.boolean(), (poses, loop) => {
        const motion = inBetweens(poses, { loop });
        for (const pose of motion.keys) {
          const figure = motion.at(pose.frame);
          expect(figure?.side).toEqual(pose.side);
          expect(figure?.front).toEqual(pose.front);
        }
        for (let at = motion.from - 2; at < motion.to + 2; at += 0.7) {
          const figure = motion.at(at);
          for (const point of Object.values({ ...figure?.side })) {
            expect(Number.isFinite(point.x) && Number.isFinite(point.y)).toBe(true);
          }
          for (const point of Object.values({ ...figure?.front })) {
            expect(Number.isFinite(point.z) && Number.isFinite(point.y)).toBe(true);
          }
        }
      }),
      { numRuns: 100 },
    );
  });

  it("keep the bones of a leg between their lengths in the two poses", () => {
    fc.assert(
      fc.property(keys, (poses) => {
        const motion = inBetweens(poses);
        for (const { from, to, at } of motion.spans) {
          for (const side of SIDES) {
            const bones = [
              [`${side}-hip`, `${side}-knee`],
              [`${side}-knee`, `${side}-ankle`],
            ] as const;
            const ends = [from, to].flatMap((pose) =>
              bones.map((bone) => lengthOf(pose.side, bone)),
            );
            if (ends.some((length) => !(length > 0))) continue;
            for (const share of [0.1, 0.5, 0.8]) {
              const { side: figure } = at(from.frame + share * (to.frame - from.frame));
              for (const [nth, bone] of bones.entries()) {
                const [a, b] = [ends[nth] ?? 0, ends[nth + 2] ?? 0];
                // A leg may be stretched by 0.4 % of its length, as everywhere on the board.
                const give = 0.004 * (Math.max(...ends) * 2) + 1e-6;
                expect(Math.abs(lengthOf(figure, bone) - (a + share * (b - a)))).toBeLessThan(give);
              }
            }
          }
        }
      }),
      { numRuns: 100 },
    );
  });
});

describe("in-betweens", () => {
  it("say what only one of two poses has, and leave it out between them", () => {
    const motion = inBetweens([
      key(1, { head: [0, 1.8], neck: [0, 1.6] }),
      key(5, { head: [0.4, 1.8] }),
    ]);
    expect(motion.spans[0]?.missing).toEqual([
      { view: "side", joint: "neck" },
      { view: "front", joint: "neck" },
    ]);
    expect(Object.keys(motion.at(3)?.side ?? {})).toEqual(["head"]);
    expect(motion.at(1)?.side.neck).toEqual({ x: 0, y: 1.6 });
  });

  it("stand still while a pose is held", () => {
    const held = { ...key(1, { head: [0, 1.8] }), until: 5 };
    const motion = inBetweens([held, key(9, { head: [1, 1.8] })]);
    expect(motion.at(4)?.side.head).toEqual({ x: 0, y: 1.8 });
    expect(motion.at(7)?.side.head?.x).toBeGreaterThan(0.2);
  });

  it("do not swing out after two poses a frame apart that differ by a little", () => {
    const nods = (frame: number, x: number) => key(frame, { neck: [0, 1.5], head: [x, 1.8] });
    const motion = inBetweens([nods(1, 0), nods(13, 0), nods(14, 0.01), nods(40, 0)]);
    const frames = Array.from({ length: 27 }, (_, at) => 14 + at);
    const heads = frames.map((frame) => motion.at(frame)?.side.head?.x ?? Number.NaN);
    expect(Math.max(...heads)).toBeLessThan(0.012); // by the pose a frame away it would be 0.04
    expect(Math.min(...heads)).toBeGreaterThan(-0.0005);
  });

  it("run out without a bend before an open walk's first pose and after its last", () => {
    const motion = inBetweens([1, 5, 9].map((at) => key(at, { "left-hip": [at ** 2 / 100, 1] })));
    const speed = (at: number) => {
      const [a, b] = [at - 0.01, at + 0.01].map((one) => motion.at(one)?.side["left-hip"]?.x ?? 0);
      return ((b ?? 0) - (a ?? 0)) / 0.02;
    };
    expect(speed(1.02) - speed(1.22)).toBeCloseTo(0, 3);
    expect(speed(8.98) - speed(8.78)).toBeCloseTo(0, 3);
    expect(speed(5)).toBeCloseTo(0.1, 6);
  });

  it("go on where a loop closes, as far along as it went", () => {
    const hips = (x: number, y: number) => ({ "left-hip": [x, y] as [number, number] });
    const loop = [key(1, hips(0, 0.9)), key(5, hips(0.5, 0.95)), key(9, hips(1, 0.9))];
    const motion = inBetweens(loop, { loop: true });
    const [once, again] = [motion.at(3), motion.at(11)];
    expect(again?.side["left-hip"]?.x).toBeCloseTo((once?.side["left-hip"]?.x ?? 0) + 1, 9);
    expect(again?.side["left-hip"]?.y).toBeCloseTo(once?.side["left-hip"]?.y ?? 0, 9);
    expect(inBetweens(loop).at(11)?.side["left-hip"]?.x).toBe(1);
  });

  it("remember a span until one of the poses that it hangs on is another", () => {
    const poses = [1, 4, 7, 10, 13].map((frame) => key(frame, { head: [frame / 10, 1.8] }));
    const before = inBetweens(poses).spans;
    const changed = poses.map((pose, at) => (at === 4 ? key(13, { head: [1.5, 1.8] }) : pose));
    const after = inBetweens(changed).spans;
    expect(after.map((span, at) => span === before[at])).toEqual([true, true, false, false]);
  });

  it("know nothing where there is no pose", () => {
    expect(inBetweens([]).at(1)).toBeNull();
  });
});

function lengthOf(figure: SideFigure, [from, to]: readonly [JointName, JointName]): number {
  const [a, b] = [figure[from], figure[to]];
  return a === undefined || b === undefined ? Number.NaN : Math.hypot(b.x - a.x, b.y - a.y);
}
