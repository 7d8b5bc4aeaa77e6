import { describe, expect, it } from "vitest";
import { JOINTS, type Mark, SIDES, type Side, type ViewMarks } from "../../../lib/body";
import { type CheckId, reviewWalk, type Walk, type Yardstick } from "../../../lib/gait";
import { CHECKS } from "../../../lib/gait/checks";
import { changeMarks, redrawn, turnedOver } from "../../support/changed-marks";
import { ledIn } from "../../support/led-in";
import { mirroredWalk, mirrorWord } from "../../support/mirrored-walk";
import { FAULTS } from "../../support/seeded/faults";
import type { Fault } from "../../support/seeding";
import { travelling } from "../../support/seeding";
import { sameWhenSwitched } from "../../support/switched";
import { remarksOf } from "../../support/told-remarks";
import { type PanelName, unmark, walk } from "../../support/walk";

const BASE = walk({ precision: 0 });

/** A fault at twice its threshold, on the first side that it fits: its mirror image is the other. */
function put(fault: Fault, into: Walk): readonly Walk[] {
  return SIDES.filter((side: Side) => fault.fits?.(into, side) ?? true)
    .slice(0, 1)
    .map((side) => fault.put(into, side, 2));
}
/** The other side's words; both sides in one breath are said left first. */
const mirrorImage = (line: string) => mirrorWord(line).replace("Right and left", "Left and right");
const yardstickOf = (fault: Fault): Yardstick => fault.yardsticks?.[0] ?? "trade";

/** What is a fault only beside another walk is looked at with that walk at hand, where all faults are found. */
const ALONE = FAULTS.filter((fault) => yardstickOf(fault) !== "version");

describe.each(ALONE)("$check: $name", (fault) => {
  const yardstick = yardstickOf(fault);

  it("is remarked, and its mirror image on the other side", () => {
    const faulty = put(fault, BASE);
    expect(faulty.length).toBeGreaterThan(0);
    for (const one of faulty) {
      const told = remarksOf(one, yardstick);
      expect(told.some((line) => line.startsWith(fault.check))).toBe(true);
      const mirrored = remarksOf(mirroredWalk(one), yardstick);
      expect(mirrored).toEqual(told.map(mirrorImage).toSorted());
    }
  });

  it("is told alike drawn smaller and further along, and on a page turned over", () => {
    for (const one of put(fault, BASE)) {
      const told = remarksOf(one, yardstick);
      expect(remarksOf(redrawn(one, 0.4, 140), yardstick)).toEqual(told);
      expect(remarksOf(turnedOver(turnedOver(one)), yardstick)).toEqual(told);
    }
  });

  it("is told alike travelling and on the spot, there and back", () => {
    for (const one of put(fault, travelling(BASE))) sameWhenSwitched(one, yardstick);
    for (const one of put(fault, BASE).filter(({ travel }) => travel === "on-the-spot")) {
      expect(remarksOf(travelling(one), yardstick)).toEqual(remarksOf(one, yardstick));
    }
  });
});

/** What is read off labels and frames; the rest is read off marks. */
const OFF_LABELS: readonly CheckId[] = ["missing-pose", "gaps"];
/** Told at a step's contacts, and read where both feet lie flat: at its passings. */
const OFF_PASSINGS: readonly CheckId[] = ["tempo", "width"];
const ids = (judged: Walk, kind: "sound" | "cannot-tell" | "remark") => [
  ...new Set(
    reviewWalk(judged, "trade")
      .findings.filter((finding) => finding.kind === kind)
      .map(({ check }) => check),
  ),
];

/** Every mark gone, or no number. */
const BARE: readonly (readonly [string, (judged: Walk) => Walk])[] = [
  ["not marked", (judged) => bare(judged)],
  [
    "no numbers",
    (judged) => changeMarks(judged, (mark): Mark => ({ ...mark, x: Number.NaN, y: Number.NaN })),
  ],
  [
    "marked with a precision that is no number",
    (judged) => changeMarks(judged, (mark): Mark => ({ ...mark, precision: Number.NaN })),
  ],
];

function bare(judged: Walk): Walk {
  const none: ViewMarks = {};
  return {
    ...judged,
    panels: judged.panels.map((panel) => ({ ...panel, marks: { side: none, front: none } })),
  };
}

describe("every check", () => {
  const whole = ledIn(BASE);

  it("answers a whole walk with sound, one by one as they are run", () => {
    expect(ids(whole, "sound")).toHaveLength(CHECKS.length);
    expect(ids(whole, "cannot-tell")).toEqual([]);
  });

  it.each(BARE)("that reads marks is never sound where they are %s", (_, spoiled) => {
    const spoilt = spoiled(whole);
    expect(ids(spoilt, "sound").filter((check) => !OFF_LABELS.includes(check))).toEqual([]);
    expect(ids(spoilt, "remark")).toEqual([]);
  });

  it.each(BASE.panels.map(({ id }) => id as PanelName))(
    "calls nothing sound that it reads off %s, once that has no marks",
    (name) => {
      const open = unmark(BASE, name, JOINTS);
      const sound = reviewWalk(open, "trade").findings.filter(
        ({ kind, check, panels }) =>
          kind === "sound" &&
          ![...OFF_LABELS, ...OFF_PASSINGS].includes(check) &&
          panels.includes(name),
      );
      expect(sound.map(({ check, side }) => `${check} ${side}`)).toEqual([]);
    },
  );
});
