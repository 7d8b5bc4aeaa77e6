import { STORE_LIMITS } from "../shared/limits";
import type { Clock } from "./clock";
import type { Compacted, CompactOrder } from "./store/compact";
import type { DocumentTail } from "./store/document-records";

const AGAIN_MS = 60_000; // after what did not come off; our own choice, no source

/** Sees to it that what a document is loaded from stays short. */
export interface Compactor {
  /** How documents stand after a commit. */
  look(tails: readonly DocumentTail[]): void;
  /** Nobody is in the room any more: it takes less to be worth it now. */
  closed(documentId: number): void;
  /** Begins nothing any more. */
  stop(): void;
  /** Resolves when nothing is in line. */
  idle(): Promise<void>;
}

export interface CompactorDeps {
  readonly compact: (order: CompactOrder) => Promise<Compacted>;
  /** A name for this process. */
  readonly instance: string;
  readonly clock: Clock;
  readonly onDone: (done: Done) => void;
}

export interface Done {
  readonly documentId: number;
  readonly outcome: Compacted["outcome"] | "failed";
  readonly ms: number;
  readonly error?: unknown;
}

const AT_WORK = { rows: STORE_LIMITS.compactRows, bytes: STORE_LIMITS.compactBytes };
const AT_CLOSE = { rows: STORE_LIMITS.compactRowsAtClose, bytes: STORE_LIMITS.compactBytes };

/** One document at a time: it is never urgent, and people who draw come first. */
export function createCompactor({ compact, instance, clock, onDone }: CompactorDeps): Compactor {
  const line = new Map<number, CompactOrder["atLeast"]>();
  const notBefore = new Map<number, number>();
  const restUntil = new Map<number, number>();
  let running: Promise<void> | null = null;
  let stopped = false;

  async function one(documentId: number, atLeast: CompactOrder["atLeast"]): Promise<Done> {
    const at = clock.now();
    const took = () => clock.now() - at;
    try {
      const { outcome } = await compact({ documentId, by: instance, at, atLeast });
      return { documentId, outcome, ms: took() };
    } catch (error) {
      return { documentId, outcome: "failed", ms: took(), error };
    }
  }

  async function run(): Promise<void> {
    for (const [documentId, atLeast] of line) {
      if (stopped) break;
      line.delete(documentId);
      const done = await one(documentId, atLeast);
      const cameOff = done.outcome === "compacted" || done.outcome === "short";
      if (cameOff) notBefore.delete(documentId);
      else notBefore.set(documentId, clock.now() + AGAIN_MS);
      const now = clock.now();
      for (const [rested, until] of restUntil) if (until <= now) restUntil.delete(rested);
      if (done.outcome === "compacted") restUntil.set(documentId, now + STORE_LIMITS.compactRestMs);
      onDone(done);
    }
    line.clear();
    running = null;
  }

  const order = (documentId: number, atLeast: CompactOrder["atLeast"]) => {
    if (stopped || (notBefore.get(documentId) ?? 0) > clock.now()) return;
    line.set(documentId, atLeast);
    running ??= run();
  };
  /** Drawn so fast that it would be due again at once, a document costs more to compact than its tail to load. */
  const rests = ({ documentId, tailRows, tailBytes }: DocumentTail) =>
    (restUntil.get(documentId) ?? 0) > clock.now() &&
    tailRows < STORE_LIMITS.compactLongTail * AT_WORK.rows &&
    tailBytes < STORE_LIMITS.compactLongTail * AT_WORK.bytes;
  return {
    look(tails) {
      for (const tail of tails) {
        const isDue = tail.tailRows >= AT_WORK.rows || tail.tailBytes >= AT_WORK.bytes;
        if (isDue && !rests(tail)) order(tail.documentId, AT_WORK);
      }
    },
    closed: (documentId) => order(documentId, AT_CLOSE),
    stop() {
      stopped = true;
    },
    async idle() {
      while (running !== null) await running;
    },
  };
}
