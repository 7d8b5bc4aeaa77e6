import type { Storage } from "../shared/hub-message";
import { HUB_LIMITS } from "../shared/limits";
import type { Clock } from "./clock";
import { type Batch, batchLength, type Entry, newBatchId } from "./commit-line";

/**
 * Documents that could not be stored while others could. What comes for one of them waits there, in
 * order, and is tried again and again; it is never dropped.
 */
export interface Wards {
  /** With the batch it failed in, and what came after that. */
  admit(documentId: number, failed: Batch, behind: readonly Entry[]): void;
  /** Takes the entry if its document lies here. */
  takes(entry: Entry): boolean;
  /** What came of a document after what is tried, given out; it is not tried any more. */
  discharge(documentId: number): Entry[];
  /** Is anything to be tried now? */
  isDue(): boolean;
  /** Tries what is due, once. */
  visit(): Promise<void>;
  isEmpty(): boolean;
}

interface Ward {
  /** What is tried next. */
  trial: Batch;
  readonly behind: Entry[];
  readonly since: number;
  pauseMs: number;
  due: boolean;
}

export interface WardsDeps {
  readonly store: (batch: Batch) => Promise<void>;
  readonly clock: Clock;
  readonly onState: (storage: Storage, documentId: number) => void;
  readonly onDue: () => void;
}

export function createWards({ store, clock, onState, onDue }: WardsDeps): Wards {
  const wards = new Map<number, Ward>();
  const rest = (documentId: number, ward: Ward) => {
    ward.due = false;
    onState({ state: "failing", behindMs: clock.now() - ward.since }, documentId);
    clock.after(ward.pauseMs, () => {
      ward.due = true;
      onDue();
    });
    ward.pauseMs = Math.min(HUB_LIMITS.retryLongestMs, ward.pauseMs * 2);
  };
  async function treat(documentId: number, ward: Ward): Promise<void> {
    while (ward.trial.entries.length > 0) {
      try {
        await store(ward.trial);
      } catch {
        return rest(documentId, ward);
      }
      const entries = ward.behind.splice(0, batchLength(ward.behind));
      ward.trial = { id: newBatchId(), entries };
    }
    wards.delete(documentId);
    onState({ state: "ok", behindMs: 0 }, documentId);
  }
  return {
    admit(documentId, trial, behind) {
      const pauseMs = HUB_LIMITS.retryLongestMs;
      const ward = { trial, behind: [...behind], since: clock.now(), pauseMs, due: false };
      wards.set(documentId, ward);
      rest(documentId, ward);
    },
    takes(entry) {
      const ward = wards.get(entry.documentId);
      ward?.behind.push(entry);
      return ward !== undefined;
    },
    discharge: (documentId) => wards.get(documentId)?.behind.splice(0) ?? [],
    isDue: () => [...wards.values()].some(({ due }) => due),
    async visit() {
      for (const [documentId, ward] of wards) if (ward.due) await treat(documentId, ward);
    },
    isEmpty: () => wards.size === 0,
  };
}
