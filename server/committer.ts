import type { Storage, StorageState } from "../shared/hub-message";
import { HUB_LIMITS } from "../shared/limits";
import { createBacklog } from "./backlog";
import type { Clock } from "./clock";
import { type Batch, batchLength, type Entry, newBatchId } from "./commit-line";
import type { Dismissal } from "./room";
import type {
  Appended,
  DocumentTail,
  NewBatch,
  NewUpdate,
  RefusedUpdates,
} from "./store/document-records";
import { toStoreError } from "./store/store-error";
import { createWards } from "./wards";

export interface Committer {
  add(entry: Entry): void;
  /** Resolves when nothing is left in line. */
  idle(): Promise<void>;
  /** Tries nothing any more; resolves when what is being tried has ended, one way or the other. */
  halt(): Promise<void>;
  /** Updates that are not committed yet, and their bytes. */
  waiting(): number;
  waitingBytes(): number;
  state(): Storage;
  /** ms since 1970 of the last commit that passed; null before the first. */
  committedAt(): number | null;
}

/** What one commit was, for whoever counts. */
export interface Commit {
  readonly ms: number;
  readonly updates: number;
  readonly bytes: number;
}

export interface CommitterDeps {
  /** Tried again with the same batch until it passes. */
  readonly append: (batch: NewBatch) => Promise<Appended>;
  readonly clock: Clock;
  /**
   * Waited for before each commit: a turn of the loop, in which what has come in on all sockets is read and
   * shares it. A commit costs as much as ten updates in it. Measured.
   */
  readonly gather?: () => Promise<void>;
  /** How the disk does: for everybody, or for one document that cannot be stored while others can. */
  readonly onState: (storage: Storage, documentId: number | null) => void;
  /** Too much waits for the disk, or for too long (true), or no longer (false): stop reading, go on. */
  readonly onPressure: (high: boolean) => void;
  readonly onCommit?: (commit: Commit) => void;
  /** How the documents of a commit stand after it. */
  readonly onStored?: (tails: readonly DocumentTail[]) => void;
  /** What was to be done after a commit failed. The line goes on. */
  readonly onFault: (error: unknown, documentId: number) => void;
}

/**
 * One line for everything that must be committed before it is told. One commit is in flight, and what
 * comes meanwhile joins the next: an idle hub commits at once, a busy one batches by itself. A commit
 * that fails is tried again, in its place, until it passes: nothing of its document overtakes it. A
 * document that fails where others pass waits in a ward of its own, and holds up nobody else.
 */
export function createCommitter(deps: CommitterDeps): Committer {
  const { append, clock, onState, onFault, gather = aTurn } = deps;
  const line: Entry[] = [];
  const idlers: (() => void)[] = [];
  const backlog = createBacklog(deps.onPressure);
  let running = false;
  let halted = false;
  let trying: Promise<unknown> = Promise.resolve();
  let storage: Storage = { state: "ok", behindMs: 0 };
  let committedAt: number | null = null;

  const tell = (next: Storage) => {
    const changed = next.state !== storage.state || next.state !== "ok";
    storage = next;
    if (changed) onState(next, null);
  };
  async function store({ id, entries }: Batch): Promise<void> {
    const updates = updatesIn(entries);
    const since = clock.now();
    const answer = updates.length === 0 ? NOTHING : append({ id, updates });
    trying = Promise.resolve(answer).catch(() => {});
    const { stored, refused } = await answer;
    const bytes = backlog.shed(updates);
    const why = new Map(refused.map(({ documentId, reason }) => [documentId, dismissalOf(reason)]));
    for (const entry of entries) release(entry, why.get(entry.documentId));
    // What came behind may build on what was refused: it must not be stored either.
    for (const [documentId, dismissal] of why) {
      const behind = [...take(documentId), ...wards.discharge(documentId)];
      backlog.shed(updatesIn(behind));
      for (const entry of behind) release(entry, dismissal);
    }
    if (updates.length === 0) return;
    committedAt = clock.now();
    deps.onCommit?.({ ms: committedAt - since, updates: updates.length, bytes });
    deps.onStored?.(stored);
  }
  const release = ({ documentId, ...entry }: Entry, dismissal: Dismissal | undefined) => {
    try {
      if (dismissal === undefined) entry.committed();
      else entry.voided(dismissal);
    } catch (error) {
      onFault(error, documentId);
    }
  };
  /** What the line holds of one document, taken out of it. */
  const take = (documentId: number): Entry[] => {
    const isOwn = (entry: Entry) => entry.documentId === documentId;
    const own = line.filter(isOwn);
    if (own.length > 0) line.splice(0, line.length, ...line.filter((entry) => !isOwn(entry)));
    return own;
  };
  const wards = createWards({
    store,
    clock,
    onState,
    onDue: () => wake(),
  });

  async function run(): Promise<void> {
    while (!halted && (line.length > 0 || wards.isDue())) {
      await wards.visit();
      await gather();
      const entries = line.splice(0, batchLength(line));
      if (entries.length > 0) await commit({ id: newBatchId(), entries });
    }
    running = false;
    if (wards.isEmpty()) for (const resolve of idlers.splice(0)) resolve();
  }

  /** Until it is stored, or in a ward. */
  async function commit(batch: Batch): Promise<void> {
    const watch = watchCommit(clock, { tell, backlog });
    let broken = 0;
    for (
      let pause: number = HUB_LIMITS.retryFirstMs;
      ;
      pause = Math.min(HUB_LIMITS.retryLongestMs, pause * 2)
    ) {
      try {
        await store(batch);
        break;
      } catch (error) {
        const { code } = toStoreError(error);
        if (code === "broken" && ++broken === HUB_LIMITS.brokenTries) {
          await part(batch);
          break;
        }
        watch.trouble(code === "full" ? "full" : "failing");
        await new Promise<void>((resolve) => clock.after(pause, resolve));
        if (halted) return;
      }
    }
    watch.end();
  }

  /** Each document by itself: those that fail go into a ward, and the others are done. */
  async function part({ id, entries }: Batch): Promise<void> {
    const documents = new Set(entries.map(({ documentId }) => documentId));
    for (const documentId of documents) {
      // Under the batch's own name, for that may have been stored and only its answer lost.
      const own = { id, entries: entries.filter((entry) => entry.documentId === documentId) };
      const admit = () => wards.admit(documentId, own, take(documentId));
      if (documents.size === 1) admit();
      else await store(own).catch(admit);
    }
  }

  function wake(): void {
    if (running) return;
    running = true;
    void run();
  }

  return {
    add(entry) {
      if (entry.update !== null) backlog.take(entry.update);
      if (wards.takes(entry)) return;
      line.push(entry);
      wake();
    },
    idle: () =>
      new Promise((resolve) => {
        if (!running && wards.isEmpty()) resolve();
        else idlers.push(resolve);
      }),
    async halt() {
      halted = true;
      await trying;
    },
    waiting: backlog.updates,
    waitingBytes: backlog.bytes,
    state: () => storage,
    committedAt: () => committedAt,
  };
}

function aTurn(): Promise<void> {
  return new Promise((resolve) => setImmediate(resolve));
}

const NOTHING: Appended = { stored: [], refused: [] };

/** Another instance was first under a client id: loaded again, the room knows of it. */
function dismissalOf(reason: RefusedUpdates["reason"]): Dismissal {
  return reason === "generation-changed" ? "generation" : "reload";
}

function updatesIn(batch: readonly Entry[]): NewUpdate[] {
  return batch.flatMap(({ update }) => (update === null ? [] : [update]));
}

interface WatchDeps {
  readonly tell: (storage: Storage) => void;
  readonly backlog: { stall(stalled: boolean): void };
}

/** Says how a commit does for as long as it takes longer than it should, and when that is over. */
function watchCommit(clock: Clock, { tell, backlog }: WatchDeps) {
  const since = clock.now();
  let state: StorageState = "slow";
  const say = () => {
    const behindMs = clock.now() - since;
    tell({ state, behindMs });
    if (behindMs >= HUB_LIMITS.backlogMs) backlog.stall(true);
  };
  const sayAgain = () => {
    say();
    callOff = clock.after(HUB_LIMITS.storageEveryMs, sayAgain);
  };
  let callOff = clock.after(HUB_LIMITS.slowCommitMs, sayAgain);
  return {
    trouble(next: StorageState): void {
      state = next;
      say();
    },
    end(): void {
      callOff();
      backlog.stall(false);
      tell({ state: "ok", behindMs: 0 });
    },
  };
}
