import { describe, expect, it } from "vitest";
import { createCommitter } from "../../server/committer";
import { HUB_LIMITS } from "../../shared/limits";
import { committing, settle, update } from "../support/committing";
import { gate, type HandClock, handClock } from "../support/hand-clock";

describe("the committer", () => {
  it("releases in order, and what carries nothing only after what stands before it", async () => {
    const { add, wait, done, shut, open, committer } = committing();
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
    const { add, batches, shut, open, committer } = committing();
    shut();
    add(1);
    await settle();
    for (const number of [2, 3, 4]) add(number);
    open();
    await committer.idle();
    expect(batches).toEqual([[1], [2, 3, 4]]);
  });

  it("bounds what one commit holds", async () => {
    const { add, batches, shut, open, committer } = committing();
    shut();
    for (let number = 0; number < HUB_LIMITS.batchUpdates + 5; number++) add(number);
    add(-1, HUB_LIMITS.batchBytes);
    add(-2, HUB_LIMITS.batchBytes);
    open();
    await committer.idle();
    expect(batches.map(({ length }) => length)).toEqual([HUB_LIMITS.batchUpdates, 5, 1, 1]);
  });

  it("tries again in its place, waits longer each time, and tells", async () => {
    const { add, done, states, clock, failNext, committer } = committing();
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

  it("says so within a second when a commit takes long, again and again, and when it is over", async () => {
    const { add, states, clock, shut, open, committer } = committing();
    shut();
    add(1);
    await settle();
    clock.pass(HUB_LIMITS.slowCommitMs - 1);
    expect(states).toEqual([]);
    clock.pass(1);
    expect(states).toEqual([{ state: "slow", behindMs: HUB_LIMITS.slowCommitMs }]);
    expect(HUB_LIMITS.slowCommitMs).toBeLessThan(1000);
    clock.pass(HUB_LIMITS.storageEveryMs);
    expect(states.at(-1)?.behindMs).toBe(HUB_LIMITS.slowCommitMs + HUB_LIMITS.storageEveryMs);
    open();
    await committer.idle();
    expect(states.at(-1)).toEqual({ state: "ok", behindMs: 0 });
  });

  it("asks for reading to stop when work has waited for half a minute", async () => {
    const { add, pressure, clock, shut, open, committer } = committing();
    shut();
    add(1);
    await settle();
    clock.pass(HUB_LIMITS.backlogMs - HUB_LIMITS.storageEveryMs);
    expect(pressure).toEqual([]);
    clock.pass(2 * HUB_LIMITS.storageEveryMs);
    expect(pressure).toEqual([true]);
    open();
    await committer.idle();
    expect(pressure).toEqual([true, false]);
  });

  it("tries a batch again under the same name, and gives each batch a name of its own", async () => {
    const { add, names, clock, failNext, committer } = committing();
    failNext(1);
    add(1);
    await settle();
    clock.pass(50);
    await committer.idle();
    add(1);
    await committer.idle();
    expect(names).toHaveLength(3);
    expect(names[0]).toBe(names[1]);
    expect(names[1]).not.toBe(names[2]);
  });

  /** Lets the tries pass after which a batch is taken apart. */
  async function tryOut(clock: HandClock): Promise<void> {
    for (let tries = 0; tries < HUB_LIMITS.brokenTries; tries++) {
      await settle();
      clock.pass(HUB_LIMITS.retryFirstMs * 2 ** tries);
    }
    await settle();
  }

  it("lets no document that cannot be stored hold up the others, and keeps all of its work", async () => {
    const { add, done, ailing, poison, clock, committer } = committing();
    poison.add(7);
    for (const number of [1, 7, 2]) add(number);
    await tryOut(clock);
    expect(done).toEqual([1, 2]);
    expect(ailing).toEqual([{ state: "failing", documentId: 7 }]);
    add(7);
    add(3);
    await settle();
    expect(done).toEqual([1, 2, 3]);
    expect(committer.waiting()).toBe(2);
    poison.clear();
    clock.pass(HUB_LIMITS.retryLongestMs);
    await committer.idle();
    expect(done).toEqual([1, 2, 3, 7, 7]);
    expect(ailing.at(-1)).toEqual({ state: "ok", documentId: 7 });
    expect(committer.waiting()).toBe(0);
  });

  it("lets nothing of a document overtake what failed before it", async () => {
    const { add, done, poison, shut, open, clock, committer } = committing();
    poison.add(7);
    shut();
    add(7);
    await settle();
    add(7);
    add(1);
    open();
    await tryOut(clock);
    expect(done).toEqual([1]);
    poison.clear();
    clock.pass(HUB_LIMITS.retryLongestMs);
    await committer.idle();
    expect(done).toEqual([1, 7, 7]);
  });

  it("voids what a put back document refuses, and all that stands behind it", async () => {
    const { add, wait, done, voided, stale, batches, shut, open, committer } = committing();
    stale.set(7, "generation-changed");
    shut();
    add(7);
    await settle();
    add(7);
    wait(7);
    add(1);
    open();
    await committer.idle();
    expect(done).toEqual([1]);
    expect(voided).toEqual(Array.from({ length: 3 }, () => ({ number: 7, why: "generation" })));
    expect(batches).toEqual([[7], [1]]);
    expect(committer.waitingBytes()).toBe(0);
  });

  it("has a document loaded again under whose client id another instance was first", async () => {
    const { add, voided, stale, committer } = committing();
    stale.set(7, "claimed-by-another");
    add(7);
    await committer.idle();
    expect(voided).toEqual([{ number: 7, why: "reload" }]);
  });

  it("goes on when what one document was to do after its commit fails", async () => {
    const { add, done, faults, committer } = committing();
    add(7, 1, () => {
      throw new Error("a room that is out of order");
    });
    add(1);
    await committer.idle();
    add(2);
    await committer.idle();
    expect(done).toEqual([1, 2]);
    expect(faults).toEqual([7]);
  });

  it("asks for reading to stop above its limit, and to go on at half of it", async () => {
    const { add, pressure, shut, open, committer } = committing();
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

  it("takes into a commit what comes in while it gathers", async () => {
    const door = gate();
    const batches: number[] = [];
    const committer = createCommitter({
      gather: () => door.passed,
      append: async ({ updates }) => {
        batches.push(updates.length);
        return { stored: [], refused: [] };
      },
      ...{ clock: handClock(), onState() {}, onPressure() {}, onFault() {} },
    });
    const add = (number: number) =>
      committer.add({
        ...{ documentId: number, update: update(number), committed() {}, voided() {} },
      });
    add(1);
    await settle();
    add(2);
    expect(batches).toEqual([]);
    door.open();
    await committer.idle();
    expect(batches).toEqual([2]);
  });
});
