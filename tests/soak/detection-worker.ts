import { FAULTS } from "../support/seeded/faults";
import { measured } from "../support/seeded/tally";

/** Measures the faults that it is sent, one at a time, until nobody sends any more. */
process.on("message", ({ nth, throws }: { nth: number; throws: number }) => {
  const fault = FAULTS[nth];
  if (fault === undefined) throw new Error(`no fault ${nth}`);
  process.send?.({ nth, told: measured(fault, throws) });
});
