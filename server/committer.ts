import { randomBytes } from "node:crypto";
import type { Storage } from "../shared/hub-message";
import { HUB_LIMITS } from "../shared/limits";
import type { Clock } from "./clock";
import type { NewBatch, NewUpdate } from "./store/document-records";
import { toStoreError } from "./store/store-error";

const RETRY_MS = { first: 50, longest: 2000 };
const SLOW_MS = 1000; // a commit that takes longer is told to the pages

/** Work in line for the disk. Without an update it only waits for what stands before it. */
export interface Entry {
  readonly update: NewUpdate | null;
  /** Called once everything up to and with this entry is committed, in order. */
  readonly committed: () => void;
}

export interface Committer {
  add(entry: Entry): void;
  /** Resolves when nothing is left in line. */
  idle(): Promise<void>;
  /** Updates that are not committed yet. */
  waiting(): number;
  state(): Storage;
}

export interface CommitterDeps {
  /** Tried again with the same batch until it passes. */
  readonly append: (batch: NewBatch) => Promise<void>;
  readonly clock: Clock;
  readonly onState: (storage: Storage) => void;
  /** Too much waits for the disk (true), or again little enough (false): stop reading, go on. */
  readonly onPressure: (high: boolean) => void;
}

/**
 * One line for everything that must be committed before it is told. One commit is in flight, and what
 * comes meanwhile joins the next: an idle hub commits at once, a busy one batches by itself. A commit
 * that fails is tried again, in its place, until it passes: nothing overtakes it.
 */
export function createCommitter({ append, clock, onState, onPressure }: CommitterDeps): Committer {
  const line: Entry[] = [];
  let running: Promise<void> | null = null;
  let bytes = 0;
  let updates = 0;
  let pressed = false;
  let storage: Storage = { state: "ok", behindMs: 0 };

  const tell = (next: Storage) => {
    const changed = next.state !== storage.state || next.state !== "ok";
    storage = next;
    if (changed) onState(next);
  };
  const weigh = (by: number, count: number) => {
    bytes += by;
    updates += count;
    const limit = HUB_LIMITS.backlogBytes;
    const high = pressed ? bytes > limit / 2 : bytes > limit;
    if (high !== pressed) onPressure(high);
    pressed = high;
  };

  async function run(): Promise<void> {
    while (line.length > 0) {
      const batch = line.splice(0, batchLength(line));
      const list = batch.flatMap(({ update }) => (update === null ? [] : [update]));
      if (list.length > 0) await commit(list, { append, clock, tell });
      weigh(-sizeOf(list), -list.length);
      for (const { committed } of batch) committed();
    }
    running = null;
  }

  return {
    add(entry) {
      line.push(entry);
      if (entry.update !== null) weigh(entry.update.bytes.length, 1);
      // One turn later, so that frames read from one packet share a commit.
      running ??= Promise.resolve().then(run);
    },
    async idle() {
      while (running !== null) await running;
    },
    waiting: () => updates,
    state: () => storage,
  };
}

interface CommitDeps {
  readonly append: CommitterDeps["append"];
  readonly clock: Clock;
  readonly tell: (storage: Storage) => void;
}

async function commit(list: readonly NewUpdate[], { append, clock, tell }: CommitDeps) {
  const batch: NewBatch = { id: randomBytes(9).toString("base64url"), updates: list };
  const since = clock.now();
  const callOff = clock.after(SLOW_MS, () => tell({ state: "slow", behindMs: SLOW_MS }));
  for (let pause = RETRY_MS.first; ; pause = Math.min(RETRY_MS.longest, pause * 2)) {
    try {
      await append(batch);
      break;
    } catch (error) {
      callOff();
      const state = toStoreError(error).code === "full" ? "full" : "failing";
      tell({ state, behindMs: clock.now() - since });
      await new Promise<void>((resolve) => clock.after(pause, resolve));
    }
  }
  callOff();
  tell({ state: "ok", behindMs: 0 });
}

/** How many of the line go into one commit: bounded in number and in bytes, but at least one. */
function batchLength(line: readonly Entry[]): number {
  let bytes = 0;
  let count = 0;
  for (const { update } of line) {
    bytes += update?.bytes.length ?? 0;
    if (count > 0 && (bytes > HUB_LIMITS.batchBytes || count >= HUB_LIMITS.batchUpdates)) break;
    count++;
  }
  return count;
}

function sizeOf(list: readonly NewUpdate[]): number {
  return list.reduce((sum, { bytes }) => sum + bytes.length, 0);
}
