import * as Y from "yjs";
import type { ModelPage } from "./model-page";
import { settled, type World } from "./model-world";

const ROUNDS = 60;
const FIRST_ROUNDS = 2; // what waits for the disk is told to pages that seem to be at rest
const A_ROUND_MS = 2100; // longer than the longest pause before a commit is tried again

/** The lines hold, the disk is well, time passes: everyone has everything, or something is wrong. */
export async function comeToRest(world: World): Promise<void> {
  const { pages, clock, disk } = world;
  disk.goOn();
  disk.ailments.length = 0;
  for (let round = 0; round < ROUNDS; round++) {
    if (round >= FIRST_ROUNDS && pages.every((page) => page.isAtRest())) return;
    for (const page of pages) {
      if (page.socket?.readyState === page.socket?.CLOSED && page.socket?.down.length === 0)
        page.deliverDown(); // the news that it is closed
      await world.join(page);
      while (page.up.length > 0) page.deliverUp();
    }
    await settled();
    for (const page of pages) while ((page.socket?.down.length ?? 0) > 0) page.deliverDown();
    await settled();
    clock.pass(A_ROUND_MS);
    await settled();
  }
  world.faults.push(
    `not at rest: ${pages.filter((page) => !page.isAtRest()).map(({ name }) => name)}`,
  );
}

/** What is not as it has to be, once everything is at rest. */
export async function faultsAtRest(world: World): Promise<readonly string[]> {
  const { pages, faults, store, sheet, committed } = world;
  const stored = await store.loadDocument(sheet, "drawing");
  const database = new Y.Doc();
  for (const update of stored?.updates ?? []) Y.applyUpdate(database, update);
  if (database.store.pendingStructs !== null) faults.push("the database has a gap");
  if (!same(database, committed)) faults.push("the database is not what was committed to it");
  const there = database.getMap("strokes");
  for (const page of pages) {
    const inTime = world.handedOverInTime(page);
    if (!page.out && !same(page.doc, database)) faults.push(`${page.name} and the database differ`);
    if (inTime !== null) faults.push(...acceptedTooLate(page, there, inTime));
    else faults.push(...lostOf(page, there));
  }
  return faults;
}

function lostOf(page: ModelPage, there: Y.Map<unknown>): string[] {
  const kept = [...page.drawn].filter((stroke) => !page.erased.has(stroke));
  return [
    ...kept.filter((stroke) => !there.has(stroke)).map((stroke) => `${stroke} is lost`),
    ...[...page.erased].filter((stroke) => there.has(stroke)).map((s) => `${s} is there again`),
  ];
}

function acceptedTooLate(page: ModelPage, there: Y.Map<unknown>, inTime: ReadonlySet<string>) {
  return [...page.drawn]
    .filter((stroke) => there.has(stroke) && !inTime.has(stroke))
    .map((stroke) => `${stroke} was taken after its link was`);
}

function same(one: Y.Doc, two: Y.Doc): boolean {
  const keys = (doc: Y.Doc) => [...doc.getMap("strokes").keys()].sort().join();
  return Y.equalSnapshots(Y.snapshot(one), Y.snapshot(two)) && keys(one) === keys(two);
}
