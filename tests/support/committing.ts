import { createCommitter } from "../../server/committer";
import type { NewUpdate, RefusedUpdates } from "../../server/store/document-records";
import { StoreError } from "../../server/store/store-error";
import type { Storage } from "../../shared/hub-message";
import { gate, handClock } from "./hand-clock";

/** Lets everything run that waits for nothing but its turn. */
export async function settle(): Promise<void> {
  for (let turn = 0; turn < 20; turn++) await Promise.resolve();
}

/** An update of a document, of so many bytes. */
export function update(number: number, size = 1): NewUpdate {
  return { documentId: number, generation: 1, at: 0, bytes: new Uint8Array(size) };
}

/** A committer over a disk that shuts and fails as told, and all that it says. */
export function committing() {
  const clock = handClock();
  const batches: number[][] = [];
  const states: Storage[] = [];
  const ailing: { state: string; documentId: number }[] = [];
  const pressure: boolean[] = [];
  const done: number[] = [];
  const voided: { number: number; why: string }[] = [];
  const faults: number[] = [];
  const names: string[] = [];
  /** Documents that cannot be stored, and documents that were put back meanwhile. */
  const poison = new Set<number>();
  const stale = new Map<number, RefusedUpdates["reason"]>();
  let fails = 0;
  let disk = gate();
  disk.open();
  const committer = createCommitter({
    gather: () => Promise.resolve(),
    append: async ({ id, updates }) => {
      await disk.passed;
      names.push(id);
      if (fails > 0) {
        fails--;
        throw new StoreError("busy", "the file is locked");
      }
      if (updates.some(({ documentId }) => poison.has(documentId))) {
        throw new StoreError("broken", "a row that nobody understands");
      }
      batches.push(updates.map(({ documentId }) => documentId));
      const refused = [...stale].map(([documentId, reason]) => ({ documentId, reason }));
      const concerned = refused.filter(({ documentId }) =>
        updates.some((each) => each.documentId === documentId),
      );
      return { stored: [], refused: concerned.map((each) => ({ ...each, generation: 1 })) };
    },
    clock,
    onState(state, documentId) {
      if (documentId === null) states.push(state);
      else ailing.push({ state: state.state, documentId });
    },
    onPressure: (high) => pressure.push(high),
    onFault: (_error, documentId) => faults.push(documentId),
  });
  const add = (number: number, size?: number, committed = () => void done.push(number)) =>
    committer.add({
      ...{ documentId: number, update: update(number, size), committed },
      voided: (why) => voided.push({ number, why }),
    });
  return {
    ...{ clock, batches, states, ailing, pressure, done, voided, faults, names, poison, stale },
    ...{ committer, add },
    wait: (number: number) =>
      committer.add({
        ...{ documentId: number, update: null, committed: () => done.push(number) },
        voided: (why) => voided.push({ number, why }),
      }),
    shut: () => {
      disk = gate();
    },
    open: () => disk.open(),
    failNext: (times: number) => {
      fails = times;
    },
  };
}
