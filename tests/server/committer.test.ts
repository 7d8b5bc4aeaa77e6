import { describe, expect, it } from "vitest";
import { createCommitter } from "../../server/committer";
import type { NewUpdate } from "../../server/store/document-records";
import { StoreError } from "../../server/store/store-error";
import type { Storage } from "../../shared/hub-message";
import { HUB_LIMITS } from "../../shared/limits";
import { gate, handClock } from "../support/hand-clock";

/** Lets everything run that waits for nothing but its turn. */
async function settle(): Promise<void> {
  for (let turn = 0; turn < 20; turn++) await Promise.resolve();
}

function update(number: number, size = 1): NewUpdate {
  return { documentId: number, generation: 1, at: 0, bytes: new Uint8Array(size) };
}

function setUp() {
  const clock = handClock();
  const batches: number[][] = [];
  const states: Storage[] = [];
  const pressure: boolean[] = [];
  const done: number[] = [];
  let fails = 0;
  let disk = gate();
  disk.open();
  const committer = createCommitter({
    append: async ({ updates }) => {
      await disk.passed;
      if (fails > 0) {
        fails--;
        throw new StoreError("busy", "the file is locked");
      }
      batches.push(updates.map(({ documentId }) => documentId));
    },
    clock,
    onState: (state) => states.push(state),
    onPressure: (high) => pressure.push(high),
  });
  return {
    ...{ clock, batches, states, pressure, done, committer },
    add: (number: number, size?: number) =>
      committer.add({ update: update(number, size), committed: () => done.push(number) }),
    wait: (number: number) => committer.add({ update: null, committed: () => done.push(number) }),
    shut: () => {
      disk = gate();
    },
    open: () => disk.open(),
    failNext: (times: number) => {
      fails = times;
    },
  };
}

describe("the committer", () => {
  it("releases in order, and what carries nothing only after what stands before it", async () => {
    const { add, wait, done, shut, open, committer } = setUp();
    shut();
    add(1);
    wait(2);
    add(3);
    await settle();
    expect(done).toEqual([]);
    open();
    await committer.idle();
    expect(done).toEqual([1, 2, 3]);
  });

  it("has one commit in flight, and puts the rest into the next", async () => {
    const { add, batches, shut, open, committer } = setUp();
    shut();
    add(1);
    await settle();
    for (const number of [2, 3, 4]) add(number);
    open();
    await committer.idle();
    expect(batches).toEqual([[1], [2, 3, 4]]);
  });

  it("bounds what one commit holds", async () => {
    const { add, batches, shut, open, committer } = setUp();
    shut();
    for (let number = 0; number < HUB_LIMITS.batchUpdates + 5; number++) add(number);
    add(-1, HUB_LIMITS.batchBytes);
    add(-2, HUB_LIMITS.batchBytes);
    open();
    await committer.idle();
    expect(batches.map(({ length }) => length)).toEqual([HUB_LIMITS.batchUpdates, 5, 1, 1]);
  });

  it("tries again in its place, waits longer each time, and tells", async () => {
    const { add, done, states, clock, failNext, committer } = setUp();
    failNext(3);
    add(1);
    add(2);
    for (const pause of [50, 100, 200]) {
      await settle();
      expect(done).toEqual([]);
      clock.pass(pause - 1);
      await settle();
      expect(done).toEqual([]);
      clock.pass(1);
    }
    await committer.idle();
    expect(done).toEqual([1, 2]);
    expect(states.map(({ state }) => state)).toEqual(["failing", "failing", "failing", "ok"]);
  });

  it("says so when a commit takes more than a second, and when it is over", async () => {
    const { add, states, clock, shut, open, committer } = setUp();
    shut();
    add(1);
    await settle();
    clock.pass(999);
    expect(states).toEqual([]);
    clock.pass(1);
    expect(states).toEqual([{ state: "slow", behindMs: 1000 }]);
    open();
    await committer.idle();
    expect(states.at(-1)).toEqual({ state: "ok", behindMs: 0 });
  });

  it("asks for reading to stop above its limit, and to go on at half of it", async () => {
    const { add, pressure, shut, open, committer } = setUp();
    shut();
    const part = HUB_LIMITS.backlogBytes / 4;
    for (let number = 0; number < 4; number++) add(number, part);
    expect(pressure).toEqual([]);
    add(4, part);
    expect(pressure).toEqual([true]);
    expect(committer.waiting()).toBe(5);
    open();
    await committer.idle();
    expect(pressure).toEqual([true, false]);
    expect(committer.waiting()).toBe(0);
  });
});
