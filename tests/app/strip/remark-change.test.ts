import { describe, expect, it } from "vitest";
import { remarkChange } from "../../../app/_strip/remark-change";
import { type Remark, reviewWalk } from "../../../lib/gait";
import { brindleExample, walkOf } from "../../../lib/sheet";
import { ids } from "../../support/peers";

const { remarks } = reviewWalk(walkOf(brindleExample(ids())), "trade");
const seen = remarks.filter(({ level }) => level !== "tidy");
const [first, ...others] = seen;
if (first === undefined || others.length < 2) throw new Error("Brindle has three remarks planted");

/** A review that tells these. */
const told = (...told: readonly Remark[]) => ({ remarks: told, kept: [] });

const asTidy = (remark: Remark): Remark => ({ ...remark, level: "tidy" });

describe("what is said of remarks that come and go", () => {
  it("names the one that appeared, and counts them all", () => {
    expect(remarkChange(told(...others), told(...seen))).toBe(
      `Remark: ${first.title}. ${seen.length} remarks in all.`,
    );
  });

  it("names the one that is settled", () => {
    expect(remarkChange(told(...seen), told(...others))).toContain(`Settled: ${first.title}. `);
    expect(remarkChange(told(first), told())).toBe(`Settled: ${first.title}. None is left.`);
  });

  it("counts several at once instead of reading them out", () => {
    expect(remarkChange(told(), told(...seen))).toBe(
      `${seen.length} more remarks. ${seen.length} remarks in all.`,
    );
  });

  it("is silent when only a number in a remark has changed, or its rank", () => {
    const moved = { ...first, title: `${first.title} more`, beyond: first.beyond + 1 };
    expect(remarkChange(told(...seen), told(...others, moved))).toBeNull();
  });

  it("does not call settled what is kept on purpose", () => {
    const { check, measured } = first;
    const scope = { kind: "walk" } as const;
    const entry = { id: "aaaaaaaa", check, scope, reason: "", by: "Ana", measured };
    const kept = { remarks: others, kept: [{ remark: first, entry }] };
    expect(remarkChange(told(...seen), kept)).toBeNull();
    expect(remarkChange(kept, told(...seen))).toContain(`Remark: ${first.title}.`);
  });

  it("is silent about what is only to tidy", () => {
    expect(remarkChange(told(), told(asTidy(first)))).toBeNull();
    expect(remarkChange(told(first), told(asTidy(first)))).toContain("Settled");
  });
});
