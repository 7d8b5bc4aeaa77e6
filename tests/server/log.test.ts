import { describe, expect, it } from "vitest";
import { createLog } from "../../server/log";
import { handClock } from "../support/hand-clock";

function setUp() {
  const clock = handClock();
  const lines: Record<string, unknown>[] = [];
  const log = createLog({ write: (line) => lines.push(JSON.parse(line)), clock });
  return { clock, lines, log };
}

describe("the log", () => {
  it("is one object a line, whatever is said", () => {
    const { lines, log } = setUp();
    log.error("crash", { error: 'a "quote"\nand a second line' });
    expect(lines).toEqual([
      {
        at: new Date(1_000_000).toISOString(),
        level: "error",
        event: "crash",
        error: 'a "quote"\nand a second line',
      },
    ]);
  });

  it("gives one offender one line a minute, and says how often it was", () => {
    const { clock, lines, log } = setUp();
    for (let turn = 0; turn < 1500; turn++) log.offence("refused", "ab12", { code: "damaged" });
    log.offence("refused", "cd34", { code: "role" });
    expect(lines).toHaveLength(2);
    clock.pass(60_000);
    expect(lines).toHaveLength(3);
    expect(lines[2]).toMatchObject({ event: "refused", offender: "ab12", more: 1499 });
    log.offence("refused", "ab12");
    expect(lines).toHaveLength(4);
  });

  it("does not grow with the number of offenders", () => {
    const { clock, lines, log } = setUp();
    for (let each = 0; each < 5000; each++) log.offence("refused", `device ${each}`);
    expect(lines.length).toBeLessThanOrEqual(1001);
    clock.pass(60_000);
    expect(lines.at(-1)).toMatchObject({ offender: "others", more: 3999 });
  });
});
