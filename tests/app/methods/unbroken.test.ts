import { expect, it } from "vitest";
import { unbroken } from "../../../app/_methods/unbroken";

it("keeps a number and its unit on one line, and leaves the other spaces alone", () => {
  expect(unbroken("at most 4.1 % of a leg, 10 ± 3 cm")).toBe(
    "at most 4.1\u00a0% of a leg, 10 ±\u00a03\u00a0cm",
  );
});
