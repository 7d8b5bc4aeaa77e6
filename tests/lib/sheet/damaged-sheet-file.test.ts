import { describe, expect, it } from "vitest";
import { sheetFileText } from "../../../lib/sheet";
import { DAMAGES, damaged, refusal, SOME_INK } from "./inked-file";

describe("a damaged sheet file", () => {
  it.each(DAMAGES)("names the place: %s ← %j", (path, value, says) => {
    const error = refusal(JSON.stringify(damaged(path, value)));
    expect(error.code).toBe("damaged");
    expect(error.message.startsWith(says), error.message).toBe(true);
  });

  it("is refused for a number that JSON can write and nothing can hold", () => {
    const text = sheetFileText(SOME_INK).replace(/"stepLength": [\d.]+/, '"stepLength": 1e999');
    expect(refusal(text).message).toContain("head.stepLength: expected a number above 0");
  });

  it("is refused for an id that comes twice, and a loop that ends before it starts", () => {
    const [first, second] = SOME_INK.panels;
    const twice = JSON.stringify(damaged("panels.1.id", first?.id));
    expect(refusal(twice).message).toBe(
      `panels[1].id: expected an id of its own, got "${first?.id}"`,
    );
    expect(second?.id).not.toBe(first?.id);
    expect(refusal(JSON.stringify(damaged("head.loop.from", 99))).message).toContain(
      "from not after to",
    );
  });
});
