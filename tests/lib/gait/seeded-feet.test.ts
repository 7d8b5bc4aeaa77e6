import { describe, expect, it } from "vitest";
import { COMMON_YARDSTICKS } from "../../../lib/gait";
import { GROUND_FAULTS, ROLL_FAULTS, SHAPE_FAULTS } from "../../support/faults-of-feet";
import { BUILT, namedShare } from "../../support/seeding";

describe.each([...GROUND_FAULTS, ...ROLL_FAULTS, ...SHAPE_FAULTS])("$name", (fault) => {
  const yardsticks = fault.yardsticks ?? COMMON_YARDSTICKS;

  it.each(BUILT)("is named at twice its threshold on $name", (base) => {
    for (const yardstick of yardsticks) {
      expect(namedShare(fault, base, yardstick, 2)).toBeGreaterThanOrEqual(0.95);
    }
  });

  it.each(BUILT)("is passed over at half of it on $name", (base) => {
    for (const yardstick of yardsticks) {
      expect(namedShare(fault, base, yardstick, 0.5)).toBeLessThanOrEqual(0.05);
    }
  });
});
