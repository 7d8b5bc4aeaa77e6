import { describe, expect, it } from "vitest";
import { createNewestFirst, createPace } from "../../server/pace";
import { handClock } from "../support/hand-clock";

describe("a pace", () => {
  it("lets a burst through, then as much as the clock brings", () => {
    const clock = handClock();
    const pace = createPace({ perSecond: 10, burst: 3 }, clock);
    for (let taken = 0; taken < 3; taken++) pace.take(1);
    expect(pace.waitMs()).toBe(0);
    pace.take(1);
    expect(pace.waitMs()).toBe(100);
    clock.pass(100);
    expect(pace.waitMs()).toBe(0);
  });

  it("saves no more than its burst", () => {
    const clock = handClock();
    const pace = createPace({ perSecond: 10, burst: 3 }, clock);
    clock.pass(60_000);
    pace.take(5);
    expect(pace.waitMs()).toBe(200);
  });
});

describe("the newest first", () => {
  function setUp(burst: number) {
    const clock = handClock();
    const passed: number[] = [];
    const line = createNewestFirst<number>({ perSecond: 10, burst }, clock, (it) =>
      passed.push(it),
    );
    return { clock, passed, line };
  }

  it("passes at once what comes within the pace", () => {
    const { line, passed } = setUp(3);
    for (const it of [1, 2, 3]) line.offer(it);
    expect(passed).toEqual([1, 2, 3]);
  });

  it("keeps the newest of what comes faster, and drops what stood in its place", () => {
    const { line, passed, clock } = setUp(1);
    for (const it of [1, 2, 3, 4]) line.offer(it);
    expect(passed).toEqual([1]);
    clock.pass(1000);
    expect(passed).toEqual([1, 4]);
  });

  it("never passes more than its pace, whatever is offered", () => {
    const { line, passed, clock } = setUp(5);
    for (let turn = 0; turn < 1000; turn++) {
      line.offer(turn);
      clock.pass(10);
    }
    expect(passed.length).toBeLessThanOrEqual(5 + 100); // the burst, and ten seconds at ten a second
    expect(passed.length).toBeGreaterThan(95);
  });

  it("says nothing more once it is stopped", () => {
    const { line, passed, clock } = setUp(1);
    line.offer(1);
    line.offer(2);
    line.stop();
    clock.pass(1000);
    expect(passed).toEqual([1]);
  });
});
