import type { OnPurpose } from "../../../lib/gait";
import { quantiseStroke, type Stroke } from "../../../lib/ink";
import {
  capturedExample,
  type HandedSheet,
  readSheetFile,
  SheetFileError,
  sheetFileText,
} from "../../../lib/sheet";
import { ids } from "../../support/peers";
import { strokeOf } from "../../support/strokes";

const ON_PURPOSE: readonly OnPurpose[] = [
  {
    id: "aaaaaaaa",
    check: "slide",
    scope: { kind: "panel", panel: "panel-01", side: "left" },
    reason: "wet planks, “slippery” – 🐟",
    measured: { value: 0.08, plusMinus: 0.01, unit: "leg" },
    by: "Ana",
  },
  {
    id: "bbbbbbbb",
    check: "gaps",
    scope: { kind: "side", side: "right" },
    reason: "",
    measured: { value: 2, plusMinus: 0, unit: "frames" },
    by: "",
  },
  {
    id: "cccccccc",
    check: "weight-front",
    scope: { kind: "walk" },
    reason: "the sack",
    measured: { value: -0.02, plusMinus: 0, unit: "leg" },
    by: "Ben",
  },
  {
    id: "dddddddd",
    check: "symmetry",
    subject: "shoulders",
    scope: { kind: "walk" },
    reason: "",
    measured: { value: 0.15, plusMinus: 0.01, unit: "rad" },
    by: "Ben",
  },
];

/** The captured example with some ink on it, and what is kept on purpose. */
export function inked(strokes: readonly Stroke[]): HandedSheet {
  const sheet = capturedExample(ids());
  const newId = ids(99);
  return {
    ...sheet,
    onPurpose: ON_PURPOSE,
    panels: sheet.panels.map((panel, index) => {
      if (index !== 3) return panel;
      const of = (view: "side" | "front") =>
        strokes
          .filter((stroke) => stroke.view === view)
          .map((stroke) => ({ ...quantiseStroke(stroke), id: newId(), panel: panel.id }))
          .sort((a, b) => a.z - b.z || (a.id < b.id ? -1 : 1));
      const toRedraw = { side: true, front: false };
      return { ...panel, toRedraw, ink: { side: of("side"), front: of("front") } };
    }),
  };
}

export const SOME_INK = inked([
  strokeOf([
    [100.0625, 200, 0.5],
    [110, 190, 1],
  ]),
  strokeOf([[1, 2, 1 / 63]], { view: "front", z: -3 }),
]);

/** What reading answers, or the error. */
export function refusal(text: string): SheetFileError {
  try {
    readSheetFile(text);
  } catch (error) {
    if (error instanceof SheetFileError) return error;
    throw error;
  }
  throw new Error("the file was read");
}

/** A way to the damaged value, the value put there, and what the reader says of it. */
export const DAMAGES: readonly (readonly [path: string, value: unknown, says: string])[] = [
  ["version", "1", 'version: expected 1, got "1"'],
  ["version", 0, "version: expected 1, got 0"],
  ["extra", 1, 'the file: expected only format, version, head, panels, onPurpose, got "extra"'],
  ["head", undefined, "head: expected a value, got nothing"],
  ["head", [], "head: expected an object with title, shot"],
  ["head.title", undefined, "head.title: expected a value, got nothing"],
  ["head.title", "x".repeat(201), "head.title: expected text of up to 200 characters, got "],
  ["head.kind", "jog", 'head.kind: expected "plain" or "heavy"'],
  ["head.framesPerSecond", 0, "head.framesPerSecond: expected a number above 0, up to 1000, got 0"],
  ["head.exposure", 3, "head.exposure: expected 1 or 2, got 3"],
  ["head.yardstick", "eye", 'head.yardstick: expected "trade" or "life" or "this-walk", got "eye"'],
  ["head.travel", null, "head.travel: expected"],
  ["head.framesPerStep", 12, "head.framesPerStep: expected { left: a whole number 1 to 1000"],
  ["head.framesPerStep.left", 1.5, "head.framesPerStep: expected { left: a whole number 1 to 1000"],
  ["head.stepLength", -1, "head.stepLength: expected a number above 0, up to 10, got -1"],
  ["head.advance", "0.1", 'head.advance: expected a number -10 to 10, got "0.1"'],
  ["head.build.legShare", 2, "head.build: expected { headsTall"],
  ["head.build.statureMetres", "tall", "head.build: expected { headsTall"],
  ["head.build.shoes", 2, "head.build: expected { headsTall"],
  ["head.loop.to", 0, "head.loop: expected { from: a whole number 1 to 100000"],
  ["head.credit", 7, "head.credit: expected text of up to 2000 characters, got 7"],
  ["head.colour", 7, "head: expected only title, shot"],
  ["panels", {}, "panels: expected a list of 0 to 1000000, got an object"],
  ["panels.3", null, "panels[3]: expected an object with id, frame"],
  ["panels.3.id", "a b", 'panels[3].id: expected 1 to 63 letters, digits, - or _, got "a b"'],
  ["panels.3.frame", 0, "panels[3].frame: expected a whole number 1 to 100000, got 0"],
  ["panels.3.frame", "4", 'panels[3].frame: expected a whole number 1 to 100000, got "4"'],
  ["panels.3.hold", -1, "panels[3].hold: expected a whole number 0 to 10000, got -1"],
  ["panels.3.pose", "hop", 'panels[3].pose: expected "stand" or "lead-in"'],
  ["panels.3.weightOn", "both", 'panels[3].weightOn: expected "left" or "right", or null'],
  ["panels.3.place", "0", 'panels[3].place: expected a number -100000 to 100000, or null, got "0"'],
  ["panels.3.removed", true, "panels[3]: expected only id, frame, hold, pose, weightOn, place"],
  ["panels.3.marks.top", {}, 'panels[3].marks: expected only side, front, got "top"'],
  ["panels.3.marks.side", [], "panels[3].marks.side: expected marks by joint, got []"],
  [
    "panels.3.marks.side.tail",
    [1, 2, 3],
    'panels[3].marks.side: expected names of joints, got "tail"',
  ],
  [
    "panels.3.marks.side.left-knee",
    [1, 2],
    "panels[3].marks.side.left-knee: expected [x, y, precision], numbers from -131071 to 131071, precision not below 0, got [1, 2]",
  ],
  [
    "panels.3.marks.side.left-knee",
    [1, "2", 3],
    'panels[3].marks.side.left-knee: expected [x, y, precision], numbers from -131071 to 131071, precision not below 0, got [1, "2", 3]',
  ],
  [
    "panels.3.marks.front.head",
    [1, 2, -1],
    "panels[3].marks.front.head: expected [x, y, precision]",
  ],
  [
    "panels.3.marks.front.head",
    [18_346_500, 2, 1],
    "panels[3].marks.front.head: expected [x, y, precision], numbers from -131071 to 131071, precision not below 0, got [18346500, 2, 1]",
  ],
  ["panels.3.ink.front", {}, "panels[3].ink.front: expected a list of 0 to 1000000, got an object"],
  ["panels.3.ink.side.0.nib", "crayon", 'panels[3].ink.side[0].nib: expected "fine" or "broad"'],
  ["panels.3.ink.side.0.colour", "red", "panels[3].ink.side[0].colour: expected"],
  ["panels.3.ink.side.0.width", 0, "panels[3].ink.side[0].width: expected a number 0.0625 to 4096"],
  ["panels.3.ink.side.0.z", 0.5, "panels[3].ink.side[0].z: expected a whole number"],
  ["panels.3.ink.side.0.id", "", "panels[3].ink.side[0].id: expected 1 to 63 letters"],
  [
    "panels.3.ink.side.0.points",
    [],
    "panels[3].ink.side[0].points: expected a list of 1 to 65535, got []",
  ],
  [
    "panels.3.ink.side.0.points.1",
    [1, 2, 1.5],
    "panels[3].ink.side[0].points[1]: expected [x, y, pressure], x and y numbers from -131071 to 131071, pressure 0 to 1",
  ],
  ["panels.3.ink.side.0.points.1", [1, null, 1], "panels[3].ink.side[0].points[1]: expected [x, y"],
  ["panels.3.toRedraw", true, "panels[3].toRedraw: expected { side: true or false; front: true"],
  ["panels.3.toRedraw.side", 1, "panels[3].toRedraw: expected { side: true or false; front: true"],
  ["panels.3.toRedraw.top", true, "panels[3].toRedraw: expected { side: true or false; front:"],
  ["onPurpose", {}, "onPurpose: expected a list of 0 to 1000000, got an object"],
  ["onPurpose.0", null, "onPurpose[0]: expected an object with id, check"],
  ["onPurpose.0.id", "a b", "onPurpose[0].id: expected 1 to 63 letters"],
  ["onPurpose.0.check", "posture", 'onPurpose[0].check: expected "missing-pose" or'],
  ["onPurpose.3.subject", "nose", 'onPurpose[3].subject: expected "shoulders" or'],
  ["onPurpose.0.scope", { kind: "scene" }, 'onPurpose[0].scope: expected { kind: "panel"; panel:'],
  ["onPurpose.0.scope.side", undefined, "onPurpose[0].scope: expected"],
  ["onPurpose.1.scope.side", null, "onPurpose[1].scope: expected"],
  ["onPurpose.2.scope.panel", "panel-01", "onPurpose[2].scope: expected"],
  ["onPurpose.0.reason", "x".repeat(501), "onPurpose[0].reason: expected text of up to 500"],
  ["onPurpose.0.by", null, "onPurpose[0].by: expected text of up to 40 characters, got null"],
  ["onPurpose.0.measured.unit", "inch", "onPurpose[0].measured: expected { value: a number"],
  ["onPurpose.0.measured.plusMinus", -1, "onPurpose[0].measured: expected { value: a number"],
  ["onPurpose.0.at", 1, "onPurpose[0]: expected only id, check, scope, reason, measured, by"],
  ["panels.3.ink.side.0.pen", 1, "panels[3].ink.side[0]: expected only id, nib"],
];

/** A copy of the file with the value at this path put in place of what was there. */
export function damaged(path: string, value: unknown): unknown {
  const file = JSON.parse(sheetFileText(SOME_INK));
  const steps = path.split(".");
  const last = steps.pop() ?? "";
  const holder = steps.reduce((at, step) => at[step], file);
  if (value === undefined) delete holder[last];
  else holder[last] = value;
  return file;
}
