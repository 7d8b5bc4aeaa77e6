import { describe, expect, it } from "vitest";
import { COMMON_YARDSTICKS } from "../../../lib/gait";
import { WEIGHT_FAULTS } from "../../support/faults-of-weight";
import { BUILT, CAPTURED, namedShare } from "../../support/seeding";

const bases = [...BUILT, ...CAPTURED];

describe.each(WEIGHT_FAULTS)("$name", (fault) => {
  it.each(bases)("is named at twice its threshold on $name", (base) => {
    for (const yardstick of COMMON_YARDSTICKS) {
      expect(namedShare(fault, base, yardstick, 2)).toBeGreaterThanOrEqual(fault.least ?? 0.95);
    }
  });

  it.each(bases)("is passed over at half of it on $name", (base) => {
    for (const yardstick of COMMON_YARDSTICKS) {
      expect(namedShare(fault, base, yardstick, 0.5)).toBeLessThanOrEqual(0.05);
    }
  });
});
