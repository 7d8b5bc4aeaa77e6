import { describe, expect, it } from "vitest";
import { createOutbox, type Missed, type OutboxSocket } from "../../server/outbox";
import { HUB_LIMITS } from "../../shared/limits";
import { handClock } from "../support/hand-clock";

/** A socket whose reader takes only what a test lets it. */
function slowSocket() {
  const waiting: { size: number; flushed: () => void }[] = [];
  const socket: OutboxSocket & { sent: number; take(count: number): void } = {
    OPEN: 1,
    readyState: 1,
    bufferedAmount: 0,
    sent: 0,
    send(frame, _options, flushed) {
      socket.sent++;
      socket.bufferedAmount += frame.length;
      waiting.push({ size: frame.length, flushed });
    },
    take(count) {
      for (const { size, flushed } of waiting.splice(0, count)) {
        socket.bufferedAmount -= size;
        flushed();
      }
    },
  };
  return socket;
}

/** How often something was held back, and given out. */
function heldLine() {
  const line = { held: 0, given: 0, cork: () => line.held++, uncork: () => line.given++ };
  return line;
}

/** A large frame goes in so many pieces. */
const PIECES = HUB_LIMITS.outboxHardBytes / 4 / HUB_LIMITS.fragmentBytes;
const QUARTER = new Uint8Array(HUB_LIMITS.outboxHardBytes / 4);

function setUp() {
  const clock = handClock();
  const socket = slowSocket();
  const drained: Missed[] = [];
  const full: boolean[] = [];
  const line = heldLine();
  const outbox = createOutbox({
    ...{ socket, line, clock },
    onDrained: (missed) => drained.push(missed),
    onFull: (is) => full.push(is),
  });
  return { clock, socket, line, outbox, drained, full };
}

describe("an outbox", () => {
  it("leaves live things out long before it leaves out news", () => {
    const { socket, outbox } = setUp();
    outbox.send(QUARTER, "news");
    outbox.send(Uint8Array.of(1), "news");
    const before = socket.sent;
    outbox.send(Uint8Array.of(2), "passing");
    expect(socket.sent).toBe(before);
  });

  it("costs a slow reader's hub no more memory, however much there is to tell", () => {
    const { socket, outbox } = setUp();
    for (let frame = 0; frame < 100; frame++) outbox.send(QUARTER, "news");
    expect(socket.bufferedAmount).toBeLessThanOrEqual(HUB_LIMITS.outboxHardBytes + QUARTER.length);
  });

  it("asks once for what was left out, when the reader has caught up, and then goes on", () => {
    const { socket, outbox, drained } = setUp();
    for (let frame = 0; frame < 10; frame++) outbox.send(QUARTER, "news");
    const before = socket.sent;
    socket.take(2 * PIECES);
    expect(drained).toEqual([]);
    outbox.send(Uint8Array.of(1), "news");
    expect(socket.sent).toBe(before); // still behind: it would come before what it builds on
    socket.take(10 * PIECES);
    expect(drained).toEqual([{ news: true, presence: false }]);
    outbox.send(Uint8Array.of(1), "news");
    expect(socket.sent).toBe(before + 1);
  });

  it("makes up for presence when the reader has caught up, and not for live ink", () => {
    const { socket, outbox, drained } = setUp();
    outbox.send(QUARTER, "news");
    outbox.send(Uint8Array.of(0), "news");
    outbox.send(Uint8Array.of(1), "passing");
    socket.take(PIECES + 1);
    expect(drained).toEqual([]);
    outbox.send(QUARTER, "news");
    outbox.send(Uint8Array.of(0), "news");
    for (let turn = 0; turn < 5; turn++) outbox.send(Uint8Array.of(1), "presence");
    socket.take(PIECES + 1);
    expect(drained).toEqual([{ news: false, presence: true }]);
  });

  it("says when a page should not be read because it does not read itself", () => {
    const { socket, outbox, full } = setUp();
    for (let frame = 0; frame < 8; frame++) outbox.send(QUARTER, "must");
    expect(full).toEqual([true]);
    socket.take(4 * PIECES);
    expect(full).toEqual([true]);
    socket.take(3 * PIECES);
    expect(full).toEqual([true, false]);
  });

  it("sees the progress of a reader who is slowly taking one large frame", () => {
    const { clock, socket, outbox } = setUp();
    outbox.send(new Uint8Array(8 * HUB_LIMITS.outboxHardBytes), "must");
    for (let piece = 0; piece < 10; piece++) {
      clock.pass(HUB_LIMITS.readerStillMs - 1);
      socket.take(1);
      expect(outbox.isStuck()).toBe(false);
    }
  });

  it("always sends what must be heard", () => {
    const { socket, outbox } = setUp();
    for (let frame = 0; frame < 10; frame++) outbox.send(QUARTER, "news");
    const before = socket.sent;
    outbox.send(Uint8Array.of(65), "must");
    expect(socket.sent).toBe(before + 1);
  });

  it("is stuck once a reader has taken nothing for twenty seconds", () => {
    const { clock, socket, outbox } = setUp();
    clock.pass(60_000);
    expect(outbox.isStuck()).toBe(false); // nothing to read is no standing still
    outbox.send(QUARTER, "news");
    outbox.send(QUARTER, "news");
    clock.pass(HUB_LIMITS.readerStillMs);
    expect(outbox.isStuck()).toBe(false);
    socket.take(1);
    clock.pass(HUB_LIMITS.readerStillMs + 1);
    expect(outbox.isStuck()).toBe(true);
  });

  it("knows for how long it has been silent", () => {
    const { clock, outbox } = setUp();
    clock.pass(15_000);
    expect(outbox.silentMs()).toBe(15_000);
    outbox.send(Uint8Array.of(1), "must");
    expect(outbox.silentMs()).toBe(0);
  });

  it("gives out in one piece what it is told in one turn, and holds nothing beyond it", async () => {
    const { line, outbox } = setUp();
    for (let frame = 0; frame < 5; frame++) outbox.send(Uint8Array.of(frame), "news");
    expect(line).toMatchObject({ held: 1, given: 0 });
    await new Promise(setImmediate);
    expect(line).toMatchObject({ held: 1, given: 1 });
    outbox.send(Uint8Array.of(5), "news");
    await new Promise(setImmediate);
    expect(line).toMatchObject({ held: 2, given: 2 });
  });

  it("does not hold back what is much", () => {
    const { line, outbox } = setUp();
    const part = new Uint8Array(HUB_LIMITS.fragmentBytes / 2);
    outbox.send(part, "news");
    expect(line.given).toBe(0);
    outbox.send(part, "news");
    expect(line.given).toBe(1);
  });
});
