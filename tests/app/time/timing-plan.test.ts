import { describe, expect, it } from "vitest";
import { propose } from "../../../app/_time/propose";
import { stepChoices } from "../../../app/_time/step-choices";
import { planTiming } from "../../../app/_time/timing-plan";
import { tellPlanned } from "../../../app/_time/timing-words";
import type { Timing } from "../../../app/_workspace";
import { layOut, type Sheet } from "../../../lib/sheet";
import { BRIEF_DEFAULTS } from "../../../shared/brief-defaults";

function strip(over: Partial<typeof BRIEF_DEFAULTS> = {}): Sheet {
  let count = 0;
  return layOut({ ...BRIEF_DEFAULTS, ...over }, () => `panel${count++}`);
}

const tempo = (left: number, right = left): Timing => ({
  what: "retime",
  tempo: { scope: "strip", framesPerStep: { left, right } },
});
const told = (sheet: Sheet, timing: Timing) =>
  tellPlanned(sheet, timing, planTiming(sheet, timing));

describe("a proposal", () => {
  it("begins with the strip as it stands, which moves nothing", () => {
    const sheet = strip();
    for (const what of ["even-out", "retime"] as const) {
      const planned = planTiming(sheet, propose(what, sheet));
      expect(planned).toEqual({ kind: "plan", plan: { frames: new Map(), head: {} } });
    }
  });

  it("says what is wrong with a number before anything is thrown", () => {
    const sheet = strip({ exposure: 2 });
    expect(planTiming(sheet, tempo(12, 6))).toEqual({ kind: "too-few", least: 8 });
    for (const wrong of [Number.NaN, 12.5, 0, -3, 1001]) {
      expect(planTiming(sheet, tempo(12, wrong))).toEqual({ kind: "no-number" });
    }
    const [first] = stepChoices(sheet);
    const step = { scope: { step: first?.id ?? "" }, frames: 7 };
    expect(planTiming(sheet, { what: "retime", tempo: step })).toEqual({
      kind: "too-few",
      least: 8,
    });
  });

  it("tells the new contacts, loop and pace, and the moves of evening out", () => {
    const sheet = strip();
    expect(told(sheet, tempo(16))).toBe(
      "Contacts 1 · 17 · 33. Loop 1 to 33. Reads strolling, leisurely.",
    );
    const uneven = {
      ...sheet,
      panels: sheet.panels.map((panel) =>
        panel.pose === "contact" ? panel : { ...panel, frame: panel.frame + 1 },
      ),
    };
    expect(told(uneven, { what: "even-out", scope: "strip" })).toBe(
      "Moves 5 → 4, 8 → 7, 11 → 10, 17 → 16 and 2 more.",
    );
  });

  it("offers the steps that have their next contact", () => {
    expect(stepChoices(strip()).map(({ name, frames }) => `${name}: ${frames}`)).toEqual([
      "left step 1 → 13: 12",
      "right step 13 → 25: 12",
    ]);
    expect(stepChoices({ ...strip(), panels: strip().panels.slice(0, 5) })).toHaveLength(1);
  });
});
