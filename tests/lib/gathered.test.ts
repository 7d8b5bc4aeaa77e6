import fc from "fast-check";
import { expect, it } from "vitest";
import { gathered } from "../../lib/gathered";

it("gathers what flatMap does, in the same order and with the same indices", () => {
  fc.assert(
    fc.property(fc.array(fc.array(fc.integer(), { maxLength: 3 })), (lists) => {
      const tell = (list: readonly number[], index: number) => list.map((one) => [index, one]);
      expect(gathered(lists, tell)).toEqual(lists.flatMap(tell));
    }),
  );
});
