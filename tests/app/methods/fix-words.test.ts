import { expect, it } from "vitest";
import { methods } from "../../../app/_words";
import { CHECK_IDS, hasFix } from "../../../lib/gait";

it.each(CHECK_IDS)("tells what the fix of a check does, or that there is none: %s", (check) => {
  const told = methods.fix[check];
  expect(told !== null).toBe(hasFix(check));
  expect(told ?? methods.fixNone).toMatch(/^[A-Z].*\.$/);
});
