import { describe, expect, it } from "vitest";
import {
  type OnPurpose,
  type OnPurposeScope,
  purposeOf,
  type Remark,
  reviewWalk,
  type Walk,
} from "../../../lib/gait";
import { lift, push, raise, walk } from "../../support/walk";

/** Both downs stand too high, the left one by more; the left foot slips. */
const faulty = (left = 0.06, right = 0.04): Walk =>
  push(
    raise(raise(walk(), "left down", left), "right down", right),
    "left passing",
    ["left-heel", "left-ball", "left-toe", "left-ankle"],
    0.1,
  );
const read = (judged: Walk, onPurpose: readonly OnPurpose[] = []) =>
  reviewWalk(judged, "trade", onPurpose);
const named = (remarks: readonly Remark[]) =>
  remarks.map(({ check, side }) => `${check} ${side}`).toSorted();

/** An entry that keeps what the walk shows now. */
function keeping(judged: Walk, scope: OnPurposeScope["kind"], id = "entry-01"): OnPurpose {
  const { remarks } = read(judged);
  const remark = remarks.find(({ check, side }) => check === "hip-order" && side === "left");
  const purpose = remark === undefined ? null : purposeOf(remarks, remark, scope);
  if (purpose === null) throw new Error("the left down stands too high");
  return { id, reason: "he is tired", by: "Ana", ...purpose };
}

describe("keeping a remark on purpose", () => {
  it("takes it from the open remarks and answers it with its entry", () => {
    const entry = keeping(faulty(), "panel");
    const before = read(faulty());
    const after = read(faulty(), [entry]);
    expect(named(before.remarks)).toContain("hip-order left");
    expect(named(after.remarks)).not.toContain("hip-order left");
    expect(after.kept.map((one) => [one.remark.check, one.entry])).toEqual([["hip-order", entry]]);
    expect(after.remarks.length + after.kept.length).toBe(before.remarks.length);
    expect(after.findings).toEqual(before.findings);
    expect(after.lapsed).toEqual([]);
  });

  it("is told panel by panel as the remarks are", () => {
    const { remarksByPanel, keptByPanel } = read(faulty(), [keeping(faulty(), "panel")]);
    const checks = (remarks: readonly Remark[] | undefined) => remarks?.map(({ check }) => check);
    expect(checks(remarksByPanel.get("left down"))).not.toContain("hip-order");
    expect(checks(keptByPanel.get("left down")?.map(({ remark }) => remark))).toEqual([
      "hip-order",
    ]);
    expect(keptByPanel.get("right down")).toEqual([]);
  });

  it("keeps one panel, one side or the whole walk", () => {
    const open = (scope: OnPurposeScope["kind"]) =>
      named(read(faulty(), [keeping(faulty(), scope)]).remarks).filter((one) =>
        one.startsWith("hip-order"),
      );
    expect(open("panel")).toEqual(["hip-order right"]);
    expect(open("side")).toEqual(["hip-order right"]);
    expect(open("walk")).toEqual([]);
  });

  it("keeps no other check, and no panel but its own", () => {
    const entry = keeping(faulty(), "panel");
    const elsewhere: OnPurpose = {
      ...entry,
      scope: { kind: "panel", panel: "right down", side: "left" },
    };
    expect(read(faulty(), [elsewhere]).kept).toEqual([]);
    expect(read(faulty(), [{ ...entry, check: "weight-side" }]).kept).toEqual([]);
    const inFrames = { ...entry, measured: { ...entry.measured, unit: "frames" as const } };
    expect(read(faulty(), [inFrames]).kept).toEqual([]);
  });

  it("holds a remark by the narrowest of several entries, whatever their order", () => {
    const narrow = keeping(faulty(), "panel", "zzzzzzzz");
    const wide = keeping(faulty(), "walk", "aaaaaaaa");
    for (const entries of [
      [narrow, wide],
      [wide, narrow],
    ]) {
      const { kept } = read(faulty(), entries);
      expect(kept.map(({ remark, entry }) => [remark.side, entry.id]).toSorted()).toEqual([
        ["left", "zzzzzzzz"],
        ["right", "aaaaaaaa"],
      ]);
    }
  });

  it("measures a wide scope by its farthest reading", () => {
    const reading = (side: "left" | "right") =>
      read(faulty()).remarks.find((one) => one.check === "hip-order" && one.side === side)
        ?.measured;
    const [left, right] = [reading("left"), reading("right")];
    expect(Math.abs(left?.value ?? 0)).toBeGreaterThan(Math.abs(right?.value ?? 0));
    expect(keeping(faulty(), "walk").measured).toEqual(left);
  });

  /** The left shoulder stays low at both downs, and the left knee is bent more at one of them. */
  const leaning = (): Walk => {
    const low = ["left down", "right down"] as const;
    const leant = low.reduce((so, at) => lift(so, at, ["left-shoulder"], -0.06), walk());
    return push(leant, "left down", ["left-knee"], 0.1);
  };
  const keptOf = (subject: Remark["subject"]): OnPurpose => {
    const { remarks } = read(leaning());
    const remark = remarks.find((one) => one.check === "symmetry" && one.subject === subject);
    const purpose = remark === undefined ? null : purposeOf(remarks, remark, "walk");
    if (purpose === null) throw new Error(`the ${subject} are remarked`);
    return { id: "entry-01", reason: "", by: "", ...purpose };
  };

  it("keeps what was read, and no other reading of its check in the same unit", () => {
    for (const subject of ["shoulders", "knee"] as const) {
      const { kept, remarks } = read(leaning(), [keptOf(subject)]);
      expect(kept.map(({ remark }) => [remark.check, remark.subject])).toEqual([
        ["symmetry", subject],
      ]);
      expect(
        remarks.some(({ check, measured }) => check === "symmetry" && measured.unit === "rad"),
      ).toBe(true);
    }
  });

  it("knew no subject in entries from before, which hold what their unit has", () => {
    const { subject: _, sides: __, ...old } = keptOf("knee");
    const held = read(leaning(), [old]).kept.map(({ remark }) => remark.subject);
    expect(held.toSorted()).toEqual(["knee", "shoulders"]);
  });

  it("has no side to keep where a remark has none", () => {
    const [remark] = read(faulty()).remarks;
    if (remark === undefined) throw new Error("there are remarks");
    expect(purposeOf([], { ...remark, side: null }, "side")).toBeNull();
    expect(purposeOf([], { ...remark, panels: [] }, "panel")).toBeNull();
  });
});

describe("what was kept on purpose", () => {
  const entry = keeping(faulty(), "panel");
  const measuredAs = (value: number): OnPurpose => ({
    ...entry,
    measured: { ...entry.measured, value },
  });
  const { value } = entry.measured;

  it.each([
    ["doubled", value / 2.6],
    ["halved", value * 2.6],
    ["reversed", -value],
  ] as const)("lapses when its reading has %s, and its remark is told again", (change, then) => {
    const { remarks, kept, lapsed } = read(faulty(), [measuredAs(then)]);
    expect(lapsed.map((one) => one.change)).toEqual([change]);
    expect(lapsed[0]?.now).toEqual(entry.measured);
    expect(named(lapsed[0]?.remarks ?? [])).toEqual(["hip-order left"]);
    expect(kept).toEqual([]);
    expect(named(remarks)).toContain("hip-order left");
  });

  it.each([value / 1.6, value * 1.6])("is kept while it changes by less: %s", (then) => {
    const { kept, lapsed } = read(faulty(), [measuredAs(then)]);
    expect([kept.length, lapsed.length]).toEqual([1, 0]);
  });

  it("neither holds nor lapses where there is nothing to remark any more", () => {
    const { kept, lapsed } = read(walk(), [entry]);
    expect([kept, lapsed]).toEqual([[], []]);
  });

  it("leaves a wider entry to hold what a narrow one lets go", () => {
    const wide = keeping(faulty(), "walk", "entry-02");
    const { kept, lapsed } = read(faulty(), [measuredAs(value * 2.6), wide]);
    expect(lapsed.map((one) => one.entry.id)).toEqual([entry.id]);
    expect(kept.map((one) => one.entry.id)).toEqual(["entry-02", "entry-02"]);
  });

  it("is answered as settled where nothing is remarked in its scope any more", () => {
    expect(read(walk(), [entry]).settled).toEqual([entry]);
    expect(read(faulty(), [entry]).settled).toEqual([]);
    expect(read(faulty(), [measuredAs(value * 2.6)]).settled).toEqual([]);
  });
});

describe("what was kept for the whole walk", () => {
  it("knows how far each side was from nought", () => {
    const { sides } = keeping(faulty(), "walk");
    expect(sides?.map(({ side }) => side)).toEqual(["left", "right"]);
    expect(keeping(faulty(), "side").sides).toBeUndefined();
  });

  it("lapses when a side that was sound gets a remark, though the farthest stays as it was", () => {
    const one = keeping(faulty(0.06, 0), "walk");
    expect(one.sides?.map(({ side }) => side)).toEqual(["left"]);
    const { lapsed, remarks, kept } = read(faulty(0.06, 0.05), [one]);
    expect(lapsed.map(({ change }) => change)).toEqual(["elsewhere"]);
    expect(kept).toEqual([]);
    expect(named(remarks)).toContain("hip-order right");
  });

  it("lapses when the nearer side's reading doubles or halves", () => {
    const both = keeping(faulty(), "walk");
    const right = both.sides?.find(({ side }) => side === "right")?.value ?? Number.NaN;
    const withRight = (value: number): OnPurpose => ({
      ...both,
      sides: (both.sides ?? []).map((one) => (one.side === "right" ? { ...one, value } : one)),
    });
    const changes = (entry: OnPurpose) =>
      read(faulty(), [entry]).lapsed.map(({ change }) => change);
    expect(changes(withRight(right / 6))).toEqual(["doubled"]);
    expect(changes(withRight(right * 6))).toEqual(["halved"]);
    expect(changes(withRight(-right))).toEqual(["reversed"]);
    expect(changes(withRight(right * 1.2))).toEqual([]);
  });

  it("does not lapse when a side is settled", () => {
    const { lapsed, kept } = read(faulty(0.06, 0), [keeping(faulty(), "walk")]);
    expect([lapsed, kept.length]).toEqual([[], 1]);
  });

  it("knew no sides in entries from before, and goes by the farthest there", () => {
    const { sides: _, ...old } = keeping(faulty(0.06, 0), "walk");
    expect(read(faulty(0.06, 0.05), [old]).lapsed).toEqual([]);
  });
});
