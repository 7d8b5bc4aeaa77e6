import { describe, expect, it } from "vitest";
import { remarkChange } from "../../../app/_strip/remark-change";
import { type Remark, reviewWalk } from "../../../lib/gait";
import { brindleExample, walkOf } from "../../../lib/sheet";
import { ids } from "../../support/peers";

const { remarks } = reviewWalk(walkOf(brindleExample(ids())), "trade");
const seen = remarks.filter(({ level }) => level !== "tidy");
const [first, ...others] = seen;
if (first === undefined || others.length < 2) throw new Error("Brindle has three remarks planted");

const asTidy = (remark: Remark): Remark => ({ ...remark, level: "tidy" });

describe("what is said of remarks that come and go", () => {
  it("names the one that appeared, and counts them all", () => {
    expect(remarkChange(others, seen)).toBe(
      `Remark: ${first.title}. ${seen.length} remarks in all.`,
    );
  });

  it("names the one that is settled", () => {
    expect(remarkChange(seen, others)).toContain(`Settled: ${first.title}. `);
    expect(remarkChange([first], [])).toBe(`Settled: ${first.title}. None is left.`);
  });

  it("counts several at once instead of reading them out", () => {
    expect(remarkChange([], seen)).toBe(
      `${seen.length} more remarks. ${seen.length} remarks in all.`,
    );
  });

  it("is silent when only a number in a remark has changed, or its rank", () => {
    const moved = { ...first, title: `${first.title} more`, beyond: first.beyond + 1 };
    expect(remarkChange(seen, [...others, moved])).toBeNull();
  });

  it("is silent about what is only to tidy", () => {
    expect(remarkChange([], [asTidy(first)])).toBeNull();
    expect(remarkChange([first], [asTidy(first)])).toContain("Settled");
  });
});
