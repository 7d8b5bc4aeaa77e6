import { describe, expect, it } from "vitest";
import { createCompactor, type Done } from "../../server/compactor";
import type { Compacted, CompactOrder } from "../../server/store/compact";
import { STORE_LIMITS } from "../../shared/limits";
import { gate, handClock } from "../support/hand-clock";

function setUp(outcomes: readonly (Compacted | Error)[] = []) {
  const clock = handClock();
  const orders: CompactOrder[] = [];
  const done: Done[] = [];
  let disk = gate();
  disk.open();
  const compactor = createCompactor({
    ...{ clock, instance: "one", onDone: (each) => done.push(each) },
    async compact(order) {
      const outcome = outcomes[orders.push(order) - 1] ?? { outcome: "short" };
      await disk.passed;
      if (outcome instanceof Error) throw outcome;
      return outcome;
    },
  });
  const tail = (documentId: number, tailRows: number, tailBytes = 0) =>
    compactor.look([{ documentId, head: 0, size: 0, tailRows, tailBytes }]);
  const shut = () => {
    disk = gate();
  };
  return { compactor, clock, orders, done, tail, shut, open: () => disk.open() };
}

describe("the compactor", () => {
  const { compactRows, compactBytes, compactRowsAtClose } = STORE_LIMITS;

  it("waits for a thousand updates, or two MiB of them", async () => {
    const { tail, orders, compactor } = setUp();
    tail(1, compactRows - 1, compactBytes - 1);
    tail(2, compactRows);
    tail(3, 1, compactBytes);
    await compactor.idle();
    expect(orders.map(({ documentId }) => documentId)).toEqual([2, 3]);
    expect(orders[0]).toMatchObject({ by: "one", atLeast: { rows: compactRows } });
  });

  it("asks for less where a room has closed, and leaves to the store whether there is enough", async () => {
    const { orders, compactor } = setUp();
    compactor.closed(7);
    await compactor.idle();
    expect(orders).toMatchObject([{ documentId: 7, atLeast: { rows: compactRowsAtClose } }]);
  });

  it("does one document at a time, and each once however often it is due meanwhile", async () => {
    const { tail, orders, compactor, shut, open } = setUp();
    shut();
    tail(1, compactRows);
    for (let times = 0; times < 3; times++) for (const id of [2, 3]) tail(id, compactRows);
    expect(orders).toHaveLength(1);
    open();
    await compactor.idle();
    expect(orders.map(({ documentId }) => documentId)).toEqual([1, 2, 3]);
  });

  it("lets a document be for a minute after it did not come off, and goes on with others", async () => {
    const { tail, orders, done, clock, compactor } = setUp([
      new Error("the disk is away"),
      { outcome: "leased" },
      { outcome: "compacted", rows: 1, bytes: 1 },
    ]);
    for (const id of [1, 2, 3]) tail(id, compactRows);
    await compactor.idle();
    expect(done.map(({ outcome }) => outcome)).toEqual(["failed", "leased", "compacted"]);
    clock.pass(59_999);
    for (const id of [1, 2, 3]) tail(id, compactRows);
    await compactor.idle();
    expect(orders.map(({ documentId }) => documentId)).toEqual([1, 2, 3, 3]);
    clock.pass(1);
    tail(1, compactRows);
    await compactor.idle();
    expect(orders.at(-1)?.documentId).toBe(1);
  });

  it("lets a document be that it has just done, unless its tail is long or its room closes", async () => {
    const { tail, orders, clock, compactor } = setUp(
      Array.from({ length: 4 }, () => ({ outcome: "compacted", rows: 1, bytes: 1 })),
    );
    const { compactRestMs, compactLongTail } = STORE_LIMITS;
    const expectDone = async (count: number) => {
      await compactor.idle();
      expect(orders).toHaveLength(count);
    };
    tail(1, compactRows);
    await expectDone(1);
    tail(1, compactLongTail * compactRows - 1, compactLongTail * compactBytes - 1);
    await expectDone(1);
    tail(2, compactRows);
    await expectDone(2);
    tail(1, compactLongTail * compactRows);
    await expectDone(3);
    compactor.closed(1);
    await expectDone(4);
    tail(2, compactRows);
    await expectDone(4);
    clock.pass(compactRestMs);
    tail(2, compactRows);
    await expectDone(5);
  });

  it("begins nothing after it was stopped", async () => {
    const { tail, orders, compactor, shut, open } = setUp();
    shut();
    tail(1, compactRows);
    tail(2, compactRows);
    compactor.stop();
    open();
    await compactor.idle();
    tail(3, compactRows);
    compactor.closed(4);
    await compactor.idle();
    expect(orders.map(({ documentId }) => documentId)).toEqual([1]);
  });
});
