import { describe, expect, it } from "vitest";
import type { KeptWork } from "../../../app/_room/local/kept-work";
import { createLedger } from "../../../app/_room/local/ledger";
import type { RefusalCode } from "../../../shared/hub-message";

const work = (number: number, more: Partial<KeptWork> = {}): KeptWork => ({
  ...{ key: ["sheet", 1000, number, "page"], document: "drawing", generation: 1 },
  ...{ update: Uint8Array.of(number), changes: [], again: false, lost: null, ...more },
});
const numbers = (works: readonly KeptWork[]) => works.map(({ key }) => key[2]);

describe("the ledger of what is not saved", () => {
  it("takes a frame's work for saved when the hub has counted that far, and no further", () => {
    const ledger = createLedger();
    ledger.add(work(1), 2);
    ledger.add(work(2), 3);
    ledger.add(work(3), null);
    expect(numbers(ledger.saved(1))).toEqual([]);
    expect(numbers(ledger.saved(2))).toEqual([1]);
    expect(numbers(ledger.saved(99))).toEqual([2]);
    expect(numbers(ledger.all())).toEqual([3]);
    expect(ledger.hasUnsent()).toBe(true);
  });

  it("believes nothing of a line that fell, until the answer on the next holds it all", () => {
    const ledger = createLedger();
    ledger.add(work(1), 2);
    ledger.add(work(2), null);
    ledger.lineFell();
    expect(numbers(ledger.saved(2))).toEqual([]);
    ledger.answered(1);
    expect(ledger.hasUnsent()).toBe(false);
    expect(numbers(ledger.saved(1))).toEqual([1, 2]);
  });
});

describe("work whose door was shut", () => {
  it("is given out once, as it was done, and waits for nothing any more", () => {
    const ledger = createLedger();
    ledger.add(work(1), 2);
    ledger.add(work(2), null);
    const taken = ledger.takeAll();
    expect(numbers(taken)).toEqual([1, 2]);
    expect(taken.every(({ update, lost }) => update !== null && lost === null)).toBe(true);
    expect(ledger.all()).toEqual([]);
    expect(ledger.hasUnsent()).toBe(false);
    expect(ledger.takeAll()).toEqual([]);
  });
});

describe("work after a refusal", () => {
  const refused = (code: RefusalCode, more: Partial<KeptWork> = {}) => {
    const ledger = createLedger();
    ledger.add(work(1), 2);
    ledger.add(work(2, more), 3);
    ledger.add(work(3), 4);
    ledger.refused({ frame: 3, code });
    ledger.lineFell(); // as it does before anything is set aside
    return ledger.setAside();
  };
  const lost = (works: readonly KeptWork[]) => works.map(({ lost: why }) => why);

  it("is all done again where the document was at fault", () => {
    for (const code of ["damaged", "resync"] as const) {
      expect(lost(refused(code))).toEqual([null, null, null]);
    }
    expect(refused("resync").every(({ update }) => update === null)).toBe(true);
  });

  it("is lost where it is at fault itself, and what came after it is done again", () => {
    expect(lost(refused("content"))).toEqual([null, "content", null]);
    expect(lost(refused("size"))).toEqual([null, "size", null]);
  });

  it("is all lost where the sheet takes nothing from here any more", () => {
    expect(lost(refused("role"))).toEqual(["role", "role", "role"]);
    expect(lost(refused("full"))).toEqual(["full", "full", "full"]);
  });

  it("is not tried a third time", () => {
    expect(lost(refused("resync", { again: true }))).toEqual([null, "resync", null]);
  });

  it("is tried one by one where a whole answer was too large", () => {
    const ledger = createLedger();
    for (const number of [1, 2, 3]) ledger.add(work(number), null);
    ledger.answered(1);
    ledger.refused({ frame: 1, code: "size" });
    expect(lost(ledger.setAside())).toEqual([null, null, null]);
  });

  it("is all done again in a sheet that was put back", () => {
    const ledger = createLedger();
    ledger.add(work(1), 2);
    expect(lost(ledger.setAside())).toEqual([null]);
  });
});
